import { Select, Stack, TextInput } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { hazardLabels } from '../../../shared/hazards.ts';
import {
  categories,
  category,
  categoryLabels,
  stockUnit,
  stockUnits,
  unitLabels,
} from '../../../shared/stores.ts';
import { orpc } from '../../api/client.ts';
import { FieldGrid, WideField } from '../../parts/fields.tsx';
import { Fold } from '../../parts/fold.tsx';
import { gritKey } from '../finish-room/grit-key.ts';
import { GritSelect } from '../finish-room/grit-select.tsx';
import { type ConsumableInputsProps, inCategory } from './consumable-fields.ts';
import { KeepingAndHazards } from './keeping-inputs.tsx';
import { WhenToOrder } from './when-to-order-inputs.tsx';

function GritInput({ value, onChange, errors }: ConsumableInputsProps) {
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

function WhatItIs(props: ConsumableInputsProps) {
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

const orderFields = [
  'weeklyUse',
  'weeklyUseSpread',
  'waitWeeks',
  'waitWeeksSpread',
  'runOutPercent',
  'orderQuantity',
];

/** Everything about one consumable; what is needed first, the rest folded. */
export function ConsumableInputs(props: ConsumableInputsProps) {
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
