import { Checkbox, Group, Select, Stack, Textarea, TextInput } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import type { ConsumableFields } from '../../../shared/contract/stores.ts';
import { hazardCaution, hazardLabels, hazards } from '../../../shared/hazards.ts';
import {
  categories,
  category,
  categoryLabels,
  runOutPercents,
  stockUnit,
  stockUnits,
  unitLabels,
} from '../../../shared/stores.ts';
import { orpc } from '../../api/client.ts';
import { FieldGrid, WideField } from '../../parts/fields.tsx';
import { Fold } from '../../parts/fold.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { gritKey } from '../finish-room/grit-key.ts';
import { GritSelect } from '../finish-room/grit-select.tsx';
import { inCategory } from './consumable-fields.ts';

interface InputsProps {
  value: ConsumableFields;
  onChange: (value: ConsumableFields) => void;
  errors: Record<string, string>;
  /** The unit is chosen once: what is on hand was counted in it. */
  isNew: boolean;
}

function GritInput({ value, onChange, errors }: InputsProps) {
  const grits = useQuery(orpc.stores.grits.queryOptions());
  return (
    <GritSelect
      label="Grit"
      description="As printed on the back, with its scale. Sizes are of the print named on its page."
      grits={grits.data ?? []}
      value={value.grit === null ? null : gritKey(value.grit)}
      none="No grit"
      error={errors.grit}
      onChange={(key) => {
        const found = grits.data?.find((each) => gritKey(each) === key);
        onChange({
          ...value,
          grit: found === undefined ? null : { grit: found.grit, scale: found.scale },
        });
      }}
    />
  );
}

function WhatItIs(props: InputsProps) {
  const { value, onChange, errors, isNew } = props;
  return (
    <FieldGrid>
      <WideField>
        <TextInput
          label="Name"
          required
          data-autofocus
          maxLength={120}
          autoComplete="off"
          value={value.name}
          error={errors.name}
          onChange={(event) => onChange({ ...value, name: event.currentTarget.value })}
        />
      </WideField>
      <Select
        label="Category"
        data={categories.map((each) => ({ value: each, label: categoryLabels[each] }))}
        value={value.category}
        error={errors.category}
        onChange={(chosen) => {
          const next = inCategory(value, category.parse(chosen));
          onChange(isNew ? next : { ...next, unit: value.unit });
        }}
      />
      <Select
        label="Counted in"
        {...(isNew ? {} : { description: 'Chosen once: the stock was counted in it.' })}
        disabled={!isNew}
        data={stockUnits.map((each) => ({ value: each, label: unitLabels[each] }))}
        value={value.unit}
        error={errors.unit}
        onChange={(chosen) => onChange({ ...value, unit: stockUnit.parse(chosen) })}
      />
      {value.category === 'abrasive' ? <GritInput {...props} /> : null}
      <TextInput
        label="Shelf"
        description="Where it stands."
        maxLength={60}
        autoComplete="off"
        value={value.shelf}
        error={errors.shelf}
        onChange={(event) => onChange({ ...value, shelf: event.currentTarget.value })}
      />
      <TextInput
        label="Barcode"
        description="Scan the one printed on it, or leave it empty: the shop gives it one."
        maxLength={40}
        autoComplete="off"
        value={value.barcode}
        error={errors.barcode}
        onChange={(event) => onChange({ ...value, barcode: event.currentTarget.value })}
      />
    </FieldGrid>
  );
}

function WhenToOrder({ value, onChange, errors }: InputsProps) {
  const unit = unitLabels[value.unit];
  return (
    <FieldGrid>
      <NumberField
        label={`Use in a week, ${unit}`}
        description="As you reckon it; after four weeks what was issued counts."
        value={value.weeklyUse}
        error={errors.weeklyUse}
        onChange={(weeklyUse) => onChange({ ...value, weeklyUse })}
      />
      <NumberField
        label={`Spread of the use, ${unit}`}
        description="How far a week lies from the next; empty where steady."
        value={value.weeklyUseSpread}
        error={errors.weeklyUseSpread}
        onChange={(weeklyUseSpread) => onChange({ ...value, weeklyUseSpread })}
      />
      <NumberField
        label="Wait for a delivery, weeks"
        description="From ordering to the shelf."
        value={value.waitWeeks}
        error={errors.waitWeeks}
        onChange={(waitWeeks) => onChange({ ...value, waitWeeks })}
      />
      <NumberField
        label="Spread of the wait, weeks"
        description="Empty where it always takes as long."
        value={value.waitWeeksSpread}
        error={errors.waitWeeksSpread}
        onChange={(waitWeeksSpread) => onChange({ ...value, waitWeeksSpread })}
      />
      <Select
        label="Chance of running out before the delivery"
        data={runOutPercents.map((each) => ({ value: String(each), label: `${each} %` }))}
        value={String(value.runOutPercent ?? 5)}
        error={errors.runOutPercent}
        onChange={(chosen) =>
          onChange({
            ...value,
            runOutPercent: runOutPercents.find((each) => String(each) === chosen) ?? 5,
          })
        }
      />
      <NumberField
        label={`Ordered at a time, ${unit}`}
        description="A pack or a case; empty: as much as the wait takes."
        value={value.orderQuantity}
        error={errors.orderQuantity}
        onChange={(orderQuantity) => onChange({ ...value, orderQuantity })}
      />
    </FieldGrid>
  );
}

function KeepingAndHazards({ value, onChange, errors }: InputsProps) {
  return (
    <Stack>
      <NumberField
        label="Keeps once opened, days"
        description="Empty where opening changes nothing."
        value={value.openedDays}
        error={errors.openedDays}
        onChange={(openedDays) => onChange({ ...value, openedDays })}
      />
      <Checkbox.Group
        label="Hazards its safety data sheet names"
        value={value.hazards}
        onChange={(chosen) =>
          onChange({ ...value, hazards: hazards.filter((each) => chosen.includes(each)) })
        }
      >
        <Group gap="xs" mt={4} style={{ flexDirection: 'column', alignItems: 'start' }}>
          {hazards.map((each) => (
            <Checkbox
              key={each}
              value={each}
              label={hazardLabels[each]}
              description={hazardCaution[each]}
            />
          ))}
        </Group>
      </Checkbox.Group>
      <Textarea
        label="Note"
        maxLength={2000}
        value={value.note}
        error={errors.note}
        onChange={(event) => onChange({ ...value, note: event.currentTarget.value })}
      />
    </Stack>
  );
}

const orderFields = [
  'weeklyUse',
  'weeklyUseSpread',
  'waitWeeks',
  'waitWeeksSpread',
  'runOutPercent',
  'orderQuantity',
];

/** Everything about one consumable; what is needed first, the rest folded. */
export function ConsumableInputs(props: InputsProps) {
  const { value, errors } = props;
  const wrong = (names: readonly string[]) => names.some((name) => errors[name] !== undefined);
  return (
    <Stack>
      <WhatItIs {...props} />
      <Fold
        title="When to order"
        said={value.weeklyUse === null ? 'not said yet' : 'filled in'}
        isWrong={wrong(orderFields)}
      >
        <WhenToOrder {...props} />
      </Fold>
      <Fold
        title="Keeping, hazards, note"
        said={value.hazards.map((each) => hazardLabels[each]).join(', ')}
        isWrong={wrong(['openedDays', 'hazards', 'note'])}
      >
        <KeepingAndHazards {...props} />
      </Fold>
    </Stack>
  );
}
