import { useState } from 'react';
import type { OrderFields } from '../../../../shared/contract/orders.ts';
import { api } from '../../../api/client.ts';
import { FormBox } from '../../../parts/form-box.tsx';
import { Mark } from '../../../parts/mark.tsx';
import { VoidsNote } from '../consents/voids-note.tsx';
import type { Opening } from '../open-forms.ts';
import { useOrder } from '../order-screen.tsx';
import { useOrderCommand } from '../use-order-command.ts';
import { jobErrors, jobFacts, jobLabels, jobOf, rebase } from './job-fields.ts';
import { JobInputs } from './job-inputs.tsx';

/** What an approval may rest on. */
function agreedPart({ services, targetWeightLbf, targetDrawIn, estimateCents }: OrderFields) {
  return { services, targetWeightLbf, targetDrawIn, estimateCents };
}

/**
 * Changes the job. When somebody else saves meanwhile, what they changed is taken over under the
 * typed fields, and fields that both changed are named with the other's value.
 */
export function JobForm({ opening }: { opening: Opening }) {
  const { order, close } = useOrder();
  const theirs = jobOf(order);
  const [start, setStart] = useState({ job: theirs, rowVersion: order.card.rowVersion });
  const [mine, setMine] = useState(theirs);
  const [clashes, setClashes] = useState<string[]>([]);
  const [isTried, setTried] = useState(false);
  const command = useOrderCommand(api.orders.edit, () => close('job'));
  if (order.card.rowVersion !== start.rowVersion && !command.busy) {
    const rebased = rebase(start.job, mine, theirs);
    const shown = jobFacts(theirs);
    setMine(rebased.job);
    setStart({ job: theirs, rowVersion: order.card.rowVersion });
    setClashes(
      rebased.clashes.map((key) => {
        const label = key.startsWith('target') ? 'Target' : jobLabels[key];
        return `${label}: ${shown.find(([name]) => name === label)?.[1] || 'empty'}`;
      }),
    );
  }
  const errors = { ...command.details, ...(isTried ? jobErrors(mine) : {}) };
  return (
    <FormBox
      title="Change the job"
      submitLabel="Save"
      command={command}
      times={opening.times}
      onCancel={() => close('job')}
      onSubmit={() => {
        setTried(true);
        if (Object.keys(jobErrors(mine)).length > 0) return;
        void command.run({ id: order.card.id, rowVersion: start.rowVersion, ...mine });
      }}
    >
      {clashes.length > 0 ? (
        <div role="alert">
          <Mark kind="attention">Somebody else changed this too. Theirs is:</Mark>
          <ul>
            {clashes.map((clash) => (
              <li key={clash}>{clash}</li>
            ))}
          </ul>
          Saving puts yours in its place.
        </div>
      ) : null}
      <JobInputs
        job={mine}
        set={(part) => setMine((now) => ({ ...now, ...part }))}
        errors={errors}
        hasPriceLines={order.price.lines.length > 0}
        style={order.customer?.shootingStyle ?? 'unknown'}
      />
      {Object.keys(jobErrors(mine)).length > 0 ? null : (
        <VoidsNote orderId={order.card.id} change={agreedPart(mine)} />
      )}
    </FormBox>
  );
}
