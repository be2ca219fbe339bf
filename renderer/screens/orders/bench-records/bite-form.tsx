import { Textarea } from '@mantine/core';
import { useState } from 'react';
import type { MissingItem } from '../../../../shared/gates.ts';
import { api } from '../../../api/client.ts';
import { FormBox } from '../../../parts/form-box.tsx';
import { RefusedStep } from '../bench-log/refused-step.tsx';
import { useOrder } from '../order-screen.tsx';
import { useOrderCommand } from '../use-order-command.ts';

/** A bite in words, where the work was planned by hand; what the gate misses is listed. */
export function BiteForm({ onClose }: { onClose: () => void }) {
  const { order } = useOrder();
  const [note, setNote] = useState('');
  const [isTried, setTried] = useState(false);
  const [refused, setRefused] = useState<MissingItem[]>([]);
  const command = useOrderCommand(api.bench.noteRemoval, (result) => {
    if (result.outcome === 'refused') setRefused(result.missing);
    else onClose();
  });
  const isThin = note.trim().length < 3;
  const record = (override?: { reason: string }) =>
    void command.run({
      orderId: order.card.id,
      note,
      ...(override === undefined ? {} : { override }),
    });
  return (
    <>
      <FormBox
        title="Note a bite"
        submitLabel="Record the bite"
        command={command}
        onCancel={onClose}
        onSubmit={() => {
          setTried(true);
          if (!isThin) record();
        }}
      >
        <Textarea
          label="What came off"
          description="Limb, side, stations; per side and in total. A planned bite is taken at the bench view, which records its figures."
          required
          autosize
          minRows={2}
          maxLength={1000}
          value={note}
          error={
            command.details.note ?? (isTried && isThin ? 'Say what came off and where.' : undefined)
          }
          onChange={(event) => setNote(event.currentTarget.value)}
        />
      </FormBox>
      {refused.length > 0 ? (
        <RefusedStep
          label="Bite taken"
          missing={refused}
          command={command}
          onOverride={(reason) => record({ reason })}
        />
      ) : null}
    </>
  );
}
