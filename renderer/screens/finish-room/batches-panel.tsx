import { Button } from '@mantine/core';
import { useState } from 'react';
import type { Batch, FinishRoom } from '../../../shared/contract/finish.ts';
import { EmptyNote } from '../../parts/notes.tsx';
import { Panel } from '../../parts/panel.tsx';
import { PaperDialog } from '../papers/paper-dialog.tsx';
import { BatchItem } from './batch-item.tsx';
import classes from './finish-room.module.css';
import { mixable } from './mix-fields.ts';

interface BatchesPanelProps {
  room: FinishRoom;
  nowMs: number;
  /** Nothing while a batch is being mixed. */
  onMix: (() => void) | undefined;
  /** Begins a session with this batch. */
  onCoat: (batchId: string) => void;
}

/** What is in a cup, each with its clock, and the way to mix more. */
export function BatchesPanel({ room, nowMs, onMix, onCoat }: BatchesPanelProps) {
  const [printed, setPrinted] = useState<Pick<Batch, 'id' | 'name'> | null>(null);
  const canMix = mixable(room.systems).length > 0;
  return (
    <Panel
      title="Batches"
      actions={onMix === undefined || !canMix ? null : <Button onClick={onMix}>Mix a batch</Button>}
    >
      {room.batches.length === 0 ? (
        <EmptyNote title="No batch is mixed">
          {canMix
            ? 'Mix one: its parts are issued from the stores and its clock starts.'
            : 'Copy the data sheet of a two-part finish under Settings, Finishes. Then mix it here.'}
        </EmptyNote>
      ) : (
        <ul className={classes.list}>
          {room.batches.map((batch) => (
            <BatchItem
              key={batch.id}
              batch={batch}
              nowMs={nowMs}
              onCoat={() => onCoat(batch.id)}
              onPrint={() => setPrinted(batch)}
            />
          ))}
        </ul>
      )}
      {printed === null ? null : (
        <PaperDialog
          kind="mix-card"
          orderId={null}
          aboutId={printed.id}
          number={printed.name}
          onIssued={() => undefined}
          onClose={() => setPrinted(null)}
        />
      )}
    </Panel>
  );
}
