import { Checkbox, Select, TextInput } from '@mantine/core';
import { takesMoisture } from '../../../../shared/bow-checks.ts';
import { drawReferenceLabels } from '../../../../shared/bows.ts';
import type { OrderDetail } from '../../../../shared/contract/orders.ts';
import { readingPhases } from '../../../../shared/contract/readings.ts';
import { FieldGrid, WideField } from '../../../parts/fields.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { phaseLabels } from '../words.ts';
import { ScaleSelect } from './scale-select.tsx';
import type { WeighingFields } from './weighing-fields.ts';
import classes from './weighings.module.css';

type NumberKey =
  | 'rigZeroLbf'
  | 'braceIn'
  | 'tillerIn'
  | 'temperatureF'
  | 'strungMinutes'
  | 'moisturePct';
type WordKey = 'stringNote' | 'stringTrack' | 'supportPoint' | 'pullPoint' | 'riserNote';

const phaseWords = readingPhases.map((value) => ({ value, label: phaseLabels[value] }));
const referenceWords = (['amo', 'to-back', 'unknown'] as const).map((value) => ({
  value,
  label: drawReferenceLabels[value],
}));

interface SessionFieldsProps {
  order: OrderDetail;
  fields: WeighingFields;
  set: (part: Partial<WeighingFields>) => void;
  errors: Record<string, string>;
}

/** How the bow was held, strung and measured: without these a weight says little. */
export function SessionFields({ order, fields, set, errors }: SessionFieldsProps) {
  const number = (key: NumberKey, label: string, unit: string, placeholder?: string) => (
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
  const words = (key: WordKey, label: string, required = false) => (
    <TextInput
      label={label}
      required={required}
      maxLength={200}
      autoComplete="off"
      value={fields[key]}
      error={errors[key]}
      onChange={(event) => set({ [key]: event.currentTarget.value })}
    />
  );
  const isTakeDown = order.bow !== null && order.bow.takeDown !== 'one-piece';
  return (
    <FieldGrid>
      {order.limbSet === null ? null : (
        <WideField>
          <p className={classes.quiet}>Limbs weighed: {order.limbSet.name}</p>
        </WideField>
      )}
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
      {isTakeDown || fields.riserNote !== ''
        ? words('riserNote', 'Weighed on which riser', order.cameAs === 'limbs-only')
        : null}
      <ScaleSelect
        value={fields.scaleId}
        error={errors.scaleId}
        onChange={(scaleId) => set({ scaleId })}
      />
      {number('rigZeroLbf', 'Rig zero, nothing pulled', 'lb')}
      {number('braceIn', 'Brace height', 'in')}
      {words('stringNote', 'String', true)}
      {words('stringTrack', 'String track over the limbs')}
      {words('supportPoint', 'Supported at')}
      {words('pullPoint', 'Pulled at')}
      {number('tillerIn', 'Tiller, upper minus lower', 'in', '1/8 or -1/16')}
      {number('strungMinutes', 'Strung for', 'min')}
      {number('temperatureF', 'Temperature', 'F')}
      {order.bow !== null && takesMoisture(order.bow)
        ? number('moisturePct', 'Moisture of the wood', '%')
        : null}
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
