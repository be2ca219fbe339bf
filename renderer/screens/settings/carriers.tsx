import { Button, Group, Stack } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { Carrier } from '../../../shared/contract/carriers.ts';
import { api, orpc } from '../../api/client.ts';
import { useCommand } from '../../api/command.ts';
import { CommandError } from '../../parts/command-error.tsx';
import { BusyNote, EmptyNote, ErrorNote } from '../../parts/notes.tsx';
import { Panel } from '../../parts/panel.tsx';
import { CarrierForm } from './carrier-form.tsx';
import { CarrierItem } from './carrier-item.tsx';

type Open = { form: 'add' } | { form: 'edit'; carrier: Carrier } | null;

function addedWords(added: number): string {
  if (added === 0) return 'The usual profiles are all here already.';
  return 'Added. Check every figure against the guide of your own carrier.';
}

/** Carriers that parcels are measured against: generic figures to start from, each with its day. */
export function Carriers({ isOwner }: { isOwner: boolean }) {
  const carriers = useQuery(orpc.carriers.list.queryOptions());
  const [added, setAdded] = useState<number | null>(null);
  const addUsual = useCommand(api.carriers.addUsual, { onDone: (done) => setAdded(done.added) });
  const [open, setOpen] = useState<Open>(null);
  const close = () => setOpen(null);
  if (carriers.error !== null) {
    return <ErrorNote error={carriers.error} onAgain={() => void carriers.refetch()} />;
  }
  if (carriers.data === undefined) return <BusyNote />;
  const key = open === null ? 'none' : open.form === 'add' ? 'add' : open.carrier.id;
  return (
    <Panel
      title="Carriers"
      actions={
        isOwner ? (
          <Group gap="xs">
            <Button variant="default" loading={addUsual.busy} onClick={() => void addUsual.run({})}>
              Add the usual profiles
            </Button>
            <Button variant="default" onClick={() => setOpen({ form: 'add' })}>
              Add a carrier
            </Button>
          </Group>
        ) : null
      }
    >
      <CommandError command={addUsual} />
      <p role="status" style={{ marginTop: 0 }}>
        {added === null ? null : addedWords(added)}
      </p>
      {carriers.data.length === 0 ? (
        <EmptyNote title="No carrier yet">
          {isOwner
            ? 'Add the usual profiles, then check every figure against the guide of your carrier.'
            : 'The owner adds those the shop ships with.'}
        </EmptyNote>
      ) : (
        <Stack gap="xs">
          {carriers.data.map((carrier) => (
            <CarrierItem
              key={carrier.id}
              carrier={carrier}
              isOwner={isOwner}
              onEdit={() => setOpen({ form: 'edit', carrier })}
            />
          ))}
        </Stack>
      )}
      <CarrierForm
        key={key}
        opened={open !== null}
        carrier={open?.form === 'edit' ? open.carrier : null}
        onClose={close}
      />
    </Panel>
  );
}
