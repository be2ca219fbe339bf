import { Button, Stack } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { ContractOutputs } from '../../../shared/contract/types.ts';
import { orpc } from '../../api/client.ts';
import { BusyNote, EmptyNote, ErrorNote } from '../../parts/notes.tsx';
import { Panel } from '../../parts/panel.tsx';
import { ScaleCheckForm } from './scale-check-form.tsx';
import { ScaleForm } from './scale-form.tsx';
import { ScaleItem } from './scale-item.tsx';

export type Scale = ContractOutputs['scales']['list'][number];
type Open = { form: 'add' } | { form: 'edit' | 'check'; scale: Scale } | null;

/** Scales for draw weights: each is checked with two loads on the day it is used. */
export function Scales({ isOwner }: { isOwner: boolean }) {
  const scales = useQuery(orpc.scales.list.queryOptions());
  const [open, setOpen] = useState<Open>(null);
  const close = () => setOpen(null);
  if (scales.error !== null) {
    return <ErrorNote error={scales.error} onAgain={() => void scales.refetch()} />;
  }
  if (scales.data === undefined) return <BusyNote />;
  const key = open === null ? 'none' : open.form === 'add' ? 'add' : open.scale.id;
  return (
    <Panel
      title="Scales"
      actions={
        isOwner ? (
          <Button variant="default" onClick={() => setOpen({ form: 'add' })}>
            Add a scale
          </Button>
        ) : null
      }
    >
      {scales.data.length === 0 ? (
        <EmptyNote title="No scale yet">
          {isOwner
            ? 'Add the one that hangs at the weighing rig, then check it.'
            : 'The owner adds the one that hangs at the weighing rig.'}
        </EmptyNote>
      ) : (
        <Stack gap="xs">
          {scales.data.map((scale) => (
            <ScaleItem
              key={scale.id}
              scale={scale}
              isOwner={isOwner}
              onCheck={() => setOpen({ form: 'check', scale })}
              onEdit={() => setOpen({ form: 'edit', scale })}
            />
          ))}
        </Stack>
      )}
      <ScaleForm
        key={`scale ${key}`}
        opened={open?.form === 'add' || open?.form === 'edit'}
        scale={open?.form === 'edit' ? open.scale : null}
        onClose={close}
      />
      <ScaleCheckForm
        key={`check ${key}`}
        scale={open?.form === 'check' ? open.scale : null}
        onClose={close}
      />
    </Panel>
  );
}
