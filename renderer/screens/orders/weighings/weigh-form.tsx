import { Textarea } from '@mantine/core';
import { useEffect, useState } from 'react';
import { decimal } from '../../../../shared/measure.ts';
import { api } from '../../../api/client.ts';
import { FormBox } from '../../../parts/form-box.tsx';
import type { Opening } from '../open-forms.ts';
import pageClasses from '../order-page.module.css';
import { useOrder } from '../order-screen.tsx';
import { useOrderCommand } from '../use-order-command.ts';
import { PullRows } from './pull-rows.tsx';
import { SessionFields } from './session-fields.tsx';
import { phaseFrom, startWeighing, type WeighingFields } from './weighing-fields.ts';
import { weighingErrors, weighingInput } from './weighing-input.ts';

/** Records a weighing session, with the cautions where the bow is about to be drawn. */
export function WeighForm({ opening }: { opening: Opening }) {
  const { order, close } = useOrder();
  const [fields, setFields] = useState(() => startWeighing(order, opening.opens));
  const [isTried, setTried] = useState(false);
  const command = useOrderCommand(api.readings.add, () => close('weighings'));
  const set = (part: Partial<WeighingFields>) => setFields((now) => ({ ...now, ...part }));
  // biome-ignore lint/correctness/useExhaustiveDependencies: each asking may name another phase.
  useEffect(() => {
    const phase = phaseFrom(opening.opens);
    if (phase !== null) set({ phase });
  }, [opening.times]);

  const own = isTried ? weighingErrors(order, fields) : {};
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
        const input = weighingInput(order, fields);
        if (input !== null) void command.run(input);
      }}
    >
      <Cautions maxSafeDrawIn={order.bow?.maxSafeDrawIn ?? null} />
      <SessionFields order={order} fields={fields} set={set} errors={errors} />
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
