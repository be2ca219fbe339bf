import { Select } from '@mantine/core';
import { useState } from 'react';
import { Link } from 'wouter';
import type { FinishSystem } from '../../../shared/contract/finish.ts';
import { finishKindLabels } from '../../../shared/finish.ts';
import { api } from '../../api/client.ts';
import { useCommand } from '../../api/command.ts';
import { fullDay } from '../../parts/days.ts';
import { FormBox } from '../../parts/form-box.tsx';
import { EmptyNote } from '../../parts/notes.tsx';
import { Cautions } from './cautions.tsx';

interface ChooseFinishProps {
  orderId: string;
  number: string;
  /** In use. */
  systems: readonly FinishSystem[];
  /** The choice that is changed; null for the first one. */
  chosen: { finishSystemId: string; rowVersion: number } | null;
  times?: number;
  onClose: () => void;
}

/** The finish of an order: its sheet is kept as it is on this day. */
export function ChooseFinish(props: ChooseFinishProps) {
  const { orderId, number, systems, chosen, times, onClose } = props;
  const [id, setId] = useState<string | null>(
    chosen?.finishSystemId ?? (systems.length === 1 ? (systems[0]?.id ?? null) : null),
  );
  const [isTried, setTried] = useState(false);
  const command = useCommand(api.finish.choose, { onDone: onClose });
  const system = systems.find((each) => each.id === id);
  if (systems.length === 0) {
    return (
      <EmptyNote title="The shop has no finish yet">
        Copy the data sheet of one under{' '}
        <Link href="/settings?tab=finishes">Settings, Finishes</Link>.
      </EmptyNote>
    );
  }
  return (
    <FormBox
      title={`Finish of ${number}`}
      submitLabel="Choose this finish"
      command={command}
      {...(times === undefined ? {} : { times })}
      onCancel={onClose}
      onSubmit={() => {
        setTried(true);
        if (id === null) return;
        void command.run({ orderId, finishSystemId: id, rowVersion: chosen?.rowVersion ?? null });
      }}
    >
      <Select
        label="Finish"
        required
        data={systems.map(({ id: value, name, kind }) => ({
          value,
          label: `${name}, ${finishKindLabels[kind].toLowerCase()}`,
        }))}
        value={id}
        error={isTried && id === null ? 'Choose a finish.' : command.details.finishSystemId}
        onChange={setId}
      />
      {system === undefined ? null : (
        <>
          <p style={{ margin: 0 }}>
            Data sheet {system.sheet.revision} of {fullDay(system.sheet.datedOn)}. The order keeps
            it as it is today.
          </p>
          <Cautions cautions={system.cautions} />
        </>
      )}
    </FormBox>
  );
}
