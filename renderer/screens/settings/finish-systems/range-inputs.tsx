import { FieldGrid } from '../../../parts/fields.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import type { Typed } from './sheet-fields.ts';

export interface PartProps<Value> {
  value: Value;
  onChange: (value: Value) => void;
  /** By the field's path in the sheet. */
  errors: Record<string, string>;
}

interface RangeInputsProps {
  /** `Air, F`; the ends are named after it. */
  label: string;
  unit?: string;
  value: { from: Typed; to: Typed };
  onChange: (value: { from: Typed; to: Typed }) => void;
  errors: Record<string, string>;
  /** Path of the range in the sheet. */
  path: string;
}

/** The two ends of what a sheet allows, ends included. */
export function RangeInputs(props: RangeInputsProps) {
  const { label, unit, value, onChange, errors, path } = props;
  const suffix = unit === undefined ? {} : { unit };
  return (
    <FieldGrid>
      <NumberField
        label={`${label}: from`}
        required
        {...suffix}
        value={value.from}
        error={errors[path] ?? errors[`${path}.from`]}
        onChange={(from) => onChange({ ...value, from })}
      />
      <NumberField
        label={`${label}: to`}
        required
        {...suffix}
        value={value.to}
        error={errors[`${path}.to`]}
        onChange={(to) => onChange({ ...value, to })}
      />
    </FieldGrid>
  );
}
