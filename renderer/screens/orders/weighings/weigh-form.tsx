import { Checkbox, Select, Textarea, TextInput } from '@mantine/core';
import { useEffect, useState } from 'react';
import { drawReferenceLabels } from '../../../../shared/bows.ts';
import { readingPhases } from '../../../../shared/contract/readings.ts';
import { decimal } from '../../../../shared/measure.ts';
import { api } from '../../../api/client.ts';
import { FieldGrid, WideField } from '../../../parts/fields.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { FormBox } from '../form-box.tsx';
import type { Opening } from '../open-forms.ts';
import pageClasses from '../order-page.module.css';
import { useOrder } from '../order-screen.tsx';
import { useOrderCommand } from '../use-order-command.ts';
import { phaseLabels } from '../words.ts';
import { PullRows } from './pull-rows.tsx';
import { ScaleSelect } from './scale-select.tsx';
import { phaseFrom, startWeighing, type WeighingFields } from './weighing-fields.ts';
import { weighingErrors, weighingInput } from './weighing-input.ts';

const phaseWords = readingPhases.map((value) => ({ value, label: phaseLabels[value] }));
const referenceWords = (['amo', 'to-back', 'unknown'] as const).map((value) => ({
  value,
  label: drawReferenceLabels[value],
}));

type Set = (part: Partial<WeighingFields>) => void;

/** Records a weighing session, with the cautions where the bow is about to be drawn. */
export function WeighForm({ opening }: { opening: Opening }) {
  const { order, close } = useOrder();
  const [fields, setFields] = useState(() => startWeighing(order, opening.opens));
  const [isTried, setTried] = useState(false);
  const command = useOrderCommand(api.readings.add, () => close('weighings'));
  const set: Set = (part) => setFields((now) => ({ ...now, ...part }));
  // biome-ignore lint/correctness/useExhaustiveDependencies: each asking may name another phase.
  useEffect(() => {
    const phase = phaseFrom(opening.opens);
    if (phase !== null) set({ phase });
  }, [opening.times]);

  const own = isTried ? weighingErrors(order.card.id, fields) : {};
  const errors = { ...command.details, ...own };
  return (
    <FormBox
      title="Weigh"
      submitLabel="Record the weighing"
      command={command}
      times={opening.times}
      onCancel={() => close('weighings')}
      onSubmit={() => {
        setTried(true);
        const input = weighingInput(order.card.id, fields);
        if (input !== null) void command.run(input);
      }}
    >
      <Cautions maxSafeDrawIn={order.bow?.maxSafeDrawIn ?? null} />
      <SessionFields fields={fields} set={set} errors={errors} />
      <PullRows
        pulls={fields.pulls}
        onChange={(pulls) => set({ pulls })}
        reference={fields.drawReference}
        rigZeroLbf={fields.rigZeroLbf ?? 0}
        maxSafeDrawIn={order.bow?.maxSafeDrawIn ?? null}
        errors={errors}
      />
      <Textarea
        label="Note"
        maxLength={1000}
        value={fields.note}
        error={errors.note}
        onChange={(event) => set({ note: event.currentTarget.value })}
      />
    </FormBox>
  );
}

function Cautions({ maxSafeDrawIn }: { maxSafeDrawIn: number | null }) {
  return (
    <ul className={pageClasses.caution} aria-label="Before you draw">
      <li>Brace with a stringer. Wear eye protection.</li>
      <li>Stand clear of the limb path. Nobody in line with string or limbs.</li>
      <li>
        {maxSafeDrawIn === null
          ? 'Maximum safe draw not known: never past the draw marked on the bow.'
          : `Never past ${decimal(maxSafeDrawIn, 2)}", the maximum safe draw.`}
      </li>
    </ul>
  );
}

interface SessionFieldsProps {
  fields: WeighingFields;
  set: Set;
  errors: Record<string, string>;
}

function SessionFields({ fields, set, errors }: SessionFieldsProps) {
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
