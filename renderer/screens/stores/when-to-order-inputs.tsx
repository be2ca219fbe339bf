import { Select } from '@mantine/core';
import { runOutPercents, unitLabels } from '../../../shared/stores.ts';
import { FieldGrid } from '../../parts/fields.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import type { ConsumableInputsProps } from './consumable-fields.ts';

/** What the reorder point is reckoned from. */
export function WhenToOrder({ value, onChange, errors }: ConsumableInputsProps) {
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
