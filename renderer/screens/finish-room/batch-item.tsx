import { Button } from '@mantine/core';
import { useState } from 'react';
import type { Batch } from '../../../shared/contract/finish.ts';
import { api } from '../../api/client.ts';
import { useCommand } from '../../api/command.ts';
import { Mark } from '../../parts/mark.tsx';
import { ReasonForm } from '../../parts/reason-form.tsx';
import { batchState, batchWords, mixedText, pouredText } from './batch-words.ts';
import classes from './finish-room.module.css';
import { pickText } from './mix-words.ts';

interface BatchItemProps {
  batch: Batch;
  nowMs: number;
  onCoat: () => void;
  onPrint: () => void;
}

function Discard({ batch, onClose }: { batch: Batch; onClose: () => void }) {
  const command = useCommand(api.finish.discardBatch, { onDone: onClose });
  return (
    <ReasonForm
      title={`Discard ${batch.name}`}
      label="Why?"
      submitLabel="Discard it"
      command={command}
      onCancel={onClose}
      onSubmit={(reason) =>
        void command.run({ id: batch.id, rowVersion: batch.rowVersion, reason })
      }
    />
  );
}

/** One cup: what is in it, from which lots, and its clock. */
export function BatchItem({ batch, nowMs, onCoat, onPrint }: BatchItemProps) {
  const [isDiscarding, setDiscarding] = useState(false);
  const { kind, text } = batchWords(batch, nowMs);
  const state = batchState(batch, nowMs);
  const poured = pouredText(batch);
  return (
    <li className={classes.item} aria-label={`Batch ${batch.name}`}>
      <span className={classes.head}>
        <span className={classes.strong}>{batch.name}</span>
        <span>{batch.systemName}</span>
      </span>
      <Mark kind={kind}>{text}</Mark>
      <span className={classes.quiet}>
        {mixedText(batch)}
        {poured === '' ? '.' : `: ${poured}.`}
      </span>
      {batch.lots.map((pick) => (
        <span key={`${pick.part} ${pick.lotId}`} className={classes.quiet}>
          {pickText(pick)}
        </span>
      ))}
      {batch.note === '' ? null : <span>{batch.note}</span>}
      {isDiscarding ? (
        <Discard batch={batch} onClose={() => setDiscarding(false)} />
      ) : (
        <div className={classes.buttons}>
          {state === 'usable' ? <Button onClick={onCoat}>Coat with it</Button> : null}
          <Button variant="default" onClick={onPrint} aria-label={`Mix card of ${batch.name}`}>
            Mix card
          </Button>
          {state === 'discarded' ? null : (
            <Button
              variant="default"
              onClick={() => setDiscarding(true)}
              aria-label={`Discard ${batch.name}`}
            >
              Discard
            </Button>
          )}
        </div>
      )}
    </li>
  );
}
