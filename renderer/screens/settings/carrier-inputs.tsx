import { Button, Fieldset, Select, TextInput } from '@mantine/core';
import { sideRounding } from '../../../shared/parcel.ts';
import { errorsUnder } from '../../parts/field-errors.ts';
import { FieldGrid } from '../../parts/fields.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import {
  type CarrierFields,
  type LimitFields,
  limitFields,
  newSurcharge,
  type SurchargeFields,
} from './carrier-fields.ts';

interface PartProps<Value> {
  value: Value;
  onChange: (value: Value) => void;
  errors: Record<string, string>;
}

function Limits({ value, onChange, errors }: PartProps<LimitFields>) {
  return (
    <FieldGrid>
      {limitFields.map(({ key, label, unit }) => (
        <NumberField
          key={key}
          label={label}
          unit={unit}
          value={value[key]}
          error={errors[key]}
          onChange={(limit) => onChange({ ...value, [key]: limit })}
        />
      ))}
    </FieldGrid>
  );
}

/** How the carrier measures, and how it charges volume. */
export function MeasuringInputs({ value, onChange, errors }: PartProps<CarrierFields>) {
  const set = (part: Partial<CarrierFields>) => onChange({ ...value, ...part });
  return (
    <FieldGrid>
      <Select
        label="Sides are rounded"
        data={[
          { value: 'none', label: 'Not at all' },
          { value: 'nearest-inch', label: 'To the nearest inch' },
          { value: 'next-inch', label: 'Up to the next inch' },
        ]}
        value={value.rounding}
        onChange={(rounding) => set({ rounding: sideRounding.parse(rounding) })}
      />
      <Select
        label="A tube is measured"
        data={[
          { value: 'round', label: 'Round the tube' },
          { value: 'as-box', label: 'As the box around it' },
        ]}
        value={value.tubes}
        onChange={(tubes) => set({ tubes: tubes === 'round' ? 'round' : 'as-box' })}
      />
      <NumberField
        label="Volume divisor, cubic inches a pound"
        required
        value={value.divisor}
        error={errors['profile.dimensional.divisor']}
        onChange={(divisor) => set({ divisor })}
      />
      <NumberField
        label="Volume charged only over, cubic inches"
        description="Empty where it always is."
        unit="in³"
        value={value.overIn3}
        error={errors['profile.dimensional.overIn3']}
        onChange={(overIn3) => set({ overIn3 })}
      />
    </FieldGrid>
  );
}

/** Over any of these the parcel is not taken. */
export function AcceptedInputs({ value, onChange, errors }: PartProps<CarrierFields>) {
  return (
    <Fieldset legend="Not taken over any of these; exactly at a limit is inside">
      <Limits
        value={value.accepted}
        errors={errorsUnder(errors, 'profile.accepted')}
        onChange={(accepted) => onChange({ ...value, accepted })}
      />
    </Fieldset>
  );
}

function SurchargeInputs({
  value,
  onChange,
  errors,
  onRemove,
}: PartProps<SurchargeFields> & { onRemove: () => void }) {
  const title = value.name === '' ? 'Surcharge' : `Surcharge: ${value.name}`;
  return (
    <Fieldset legend={title}>
      <FieldGrid>
        <TextInput
          label="Name"
          required
          maxLength={120}
          autoComplete="off"
          value={value.name}
          error={errors.name}
          onChange={(event) => onChange({ ...value, name: event.currentTarget.value })}
        />
        <NumberField
          label="Charged as at least, pounds"
          description="Empty where it only costs a fee."
          unit="lb"
          value={value.minimumLb}
          error={errors.minimumLb}
          onChange={(minimumLb) => onChange({ ...value, minimumLb })}
        />
      </FieldGrid>
      <p>Charged over any of these{errors.over === undefined ? ':' : `. ${errors.over}`}</p>
      <Limits
        value={value.over}
        errors={errorsUnder(errors, 'over')}
        onChange={(over) => onChange({ ...value, over })}
      />
      <Button variant="default" mt="md" onClick={onRemove} aria-label={`Take out: ${title}`}>
        Take this surcharge out
      </Button>
    </Fieldset>
  );
}

export function SurchargeList({ value, onChange, errors }: PartProps<CarrierFields>) {
  const set = (surcharges: readonly SurchargeFields[]) => onChange({ ...value, surcharges });
  return (
    <>
      {value.surcharges.map((each, place) => (
        <SurchargeInputs
          key={each.key}
          value={each}
          errors={errorsUnder(errors, `profile.surcharges.${place}`)}
          onChange={(changed) =>
            set(value.surcharges.map((other) => (other.key === each.key ? changed : other)))
          }
          onRemove={() => set(value.surcharges.filter((other) => other.key !== each.key))}
        />
      ))}
      {value.surcharges.length < 20 ? (
        <Button
          variant="default"
          onClick={() => set([...value.surcharges, newSurcharge(value.surcharges)])}
        >
          Add a surcharge
        </Button>
      ) : null}
    </>
  );
}
