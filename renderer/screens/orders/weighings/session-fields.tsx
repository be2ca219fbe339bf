import { Checkbox, Select, TextInput } from '@mantine/core';
import { drawReferenceLabels } from '../../../../shared/bows.ts';
import { readingPhases } from '../../../../shared/contract/readings.ts';
import { FieldGrid, WideField } from '../../../parts/fields.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { phaseLabels } from '../words.ts';
import { ScaleSelect } from './scale-select.tsx';
import type { WeighingFields } from './weighing-fields.ts';

const phaseWords = readingPhases.map((value) => ({ value, label: phaseLabels[value] }));
const referenceWords = (['amo', 'to-back', 'unknown'] as const).map((value) => ({
  value,
  label: drawReferenceLabels[value],
}));

interface SessionFieldsProps {
  fields: WeighingFields;
  set: (part: Partial<WeighingFields>) => void;
  errors: Record<string, string>;
}

/** How the bow was held, strung and measured: without these a weight says little. */
export function SessionFields({ fields, set, errors }: SessionFieldsProps) {
  const number = (
    key: 'rigZeroLbf' | 'braceIn' | 'tillerIn' | 'temperatureF',
    label: string,
    unit: string,
    placeholder?: string,
  ) => (
    <NumberField
      label={label}
      unit={unit}
      value={fields[key]}
      error={errors[key]}
      required={key === 'braceIn'}
      {...(placeholder === undefined ? {} : { placeholder })}
      onChange={(value) => set({ [key]: value })}
    />
  );
  const words = (key: 'stringNote' | 'supportPoint' | 'pullPoint', label: string) => (
    <TextInput
      label={label}
      required={key === 'stringNote'}
      maxLength={200}
      autoComplete="off"
      value={fields[key]}
      error={errors[key]}
      onChange={(event) => set({ [key]: event.currentTarget.value })}
    />
  );
  return (
    <FieldGrid>
      <Select
        label="When in the job"
        data={phaseWords}
        value={fields.phase}
        onChange={(phase) => phase && set({ phase })}
      />
      <Select
        label="Draw lengths are measured"
        data={referenceWords}
        value={fields.drawReference}
        onChange={(drawReference) => drawReference && set({ drawReference })}
      />
      <ScaleSelect
        value={fields.scaleId}
        error={errors.scaleId}
        onChange={(scaleId) => set({ scaleId })}
      />
      {number('rigZeroLbf', 'Rig zero, nothing pulled', 'lb')}
      {number('braceIn', 'Brace height', 'in')}
      {words('stringNote', 'String')}
      {words('supportPoint', 'Supported at')}
      {words('pullPoint', 'Pulled at')}
      {number('tillerIn', 'Tiller, upper minus lower', 'in', '1/8 or -1/16')}
      {number('temperatureF', 'Temperature', 'F')}
      <WideField>
        <Checkbox
          label="Flexed to working draw before the first pull"
          checked={fields.flexedFirst}
          onChange={(event) => set({ flexedFirst: event.currentTarget.checked })}
        />
      </WideField>
    </FieldGrid>
  );
}
