import { Select } from '@mantine/core';
import { type StockUnit, stockUnit, unitLabels, unitsFor } from '../../../shared/stores.ts';
import { NumberField } from '../../parts/number-field.tsx';
import classes from './stores.module.css';

export interface Amount {
  /** NaN while the text is no number. */
  quantity: number | null;
  unit: StockUnit;
}

interface QuantityFieldsProps {
  label: string;
  /** What the consumable is counted in. */
  counted: StockUnit;
  value: Amount;
  onChange: (value: Amount) => void;
  errors: Record<string, string>;
  description?: string;
}

/** An amount with its unit; only liquids offer another one than they are counted in. */
export function QuantityFields(props: QuantityFieldsProps) {
  const { label, counted, value, onChange, errors, description } = props;
  const units = unitsFor(counted);
  return (
    <div className={classes.amounts}>
      <NumberField
        label={`${label}, ${unitLabels[value.unit]}`}
        required
        {...(description === undefined ? {} : { description })}
        value={value.quantity}
        error={errors.quantity}
        onChange={(quantity) => onChange({ ...value, quantity })}
      />
      {units.length === 1 ? null : (
        <Select
          label="Unit"
          data={units.map((unit) => ({ value: unit, label: unitLabels[unit] }))}
          value={value.unit}
          error={errors.unit}
          onChange={(unit) => onChange({ ...value, unit: stockUnit.parse(unit) })}
        />
      )}
    </div>
  );
}
