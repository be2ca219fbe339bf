import { Checkbox, Radio, Textarea, TextInput } from '@mantine/core';
import { parcelShape, parcelShapeLabels, parcelShapes } from '../../../../shared/parcel.ts';
import { FieldGrid } from '../../../parts/fields.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { MoneyField } from '../facts/money-field.tsx';
import { type ParcelFields, widthLabels } from './parcel-fields.ts';

interface ParcelInputsProps {
  fields: ParcelFields;
  set: (part: Partial<ParcelFields>) => void;
  errors: Record<string, string>;
}

/** Outside of the closed parcel. */
export function SizeInputs({ fields, set, errors }: ParcelInputsProps) {
  return (
    <>
      <Radio.Group
        size="md"
        label="Shape"
        value={fields.shape}
        onChange={(chosen) => {
          const shape = parcelShape.parse(chosen);
          set(shape === 'box' ? { shape } : { shape, heightIn: null });
        }}
      >
        <FieldGrid>
          {parcelShapes.map((shape) => (
            <Radio key={shape} value={shape} label={parcelShapeLabels[shape]} />
          ))}
        </FieldGrid>
      </Radio.Group>
      <FieldGrid>
        <NumberField
          label="Length, inches"
          unit="in"
          placeholder="66 1/2"
          value={fields.lengthIn}
          error={errors.lengthIn}
          onChange={(lengthIn) => set({ lengthIn })}
        />
        <NumberField
          label={widthLabels[fields.shape]}
          unit="in"
          value={fields.widthIn}
          error={errors.widthIn}
          onChange={(widthIn) => set({ widthIn })}
        />
        {fields.shape === 'box' ? (
          <NumberField
            label="Height, inches"
            unit="in"
            value={fields.heightIn}
            error={errors.heightIn}
            onChange={(heightIn) => set({ heightIn })}
          />
        ) : null}
        <NumberField
          label="Weight, pounds"
          unit="lb"
          value={fields.weightLb}
          error={errors.weightLb}
          onChange={(weightLb) => set({ weightLb })}
        />
      </FieldGrid>
    </>
  );
}

/** What it is worth, how that is proved, and where it is. */
export function ValueAndWayInputs({ fields, set, errors }: ParcelInputsProps) {
  const day = (key: 'shippedOn' | 'deliveredOn', label: string) => (
    <TextInput
      type="date"
      label={label}
      value={fields[key] ?? ''}
      error={errors[key]}
      onChange={(event) => set({ [key]: event.currentTarget.value || null })}
    />
  );
  return (
    <>
      <FieldGrid>
        <MoneyField
          label="Declared value, dollars"
          value={fields.declaredCents}
          error={errors.declaredCents}
          onChange={(declaredCents) => set({ declaredCents })}
        />
        <TextInput
          label="Tracking number"
          maxLength={120}
          autoComplete="off"
          value={fields.tracking}
          error={errors.tracking}
          onChange={(event) => set({ tracking: event.currentTarget.value })}
        />
        {day('shippedOn', 'Shipped on')}
        {day('deliveredOn', 'Delivered on')}
      </FieldGrid>
      <Checkbox
        label="Insured for the declared value"
        checked={fields.insured}
        onChange={(event) => set({ insured: event.currentTarget.checked })}
      />
      <Textarea
        label="What proves the value"
        description="Receipt, appraisal, photographs before packing. Without it a claim is hard to win."
        maxLength={1000}
        value={fields.valueEvidence}
        error={errors.valueEvidence}
        onChange={(event) => set({ valueEvidence: event.currentTarget.value })}
      />
      <Textarea
        label="Note"
        maxLength={1000}
        value={fields.note}
        error={errors.note}
        onChange={(event) => set({ note: event.currentTarget.value })}
      />
    </>
  );
}
