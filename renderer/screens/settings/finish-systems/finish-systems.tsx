import { Button, Stack } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { FinishSystem } from '../../../../shared/contract/finish.ts';
import { orpc } from '../../../api/client.ts';
import { useWho } from '../../../api/who.ts';
import { BusyNote, EmptyNote, ErrorNote } from '../../../parts/notes.tsx';
import { Panel } from '../../../parts/panel.tsx';
import { RoomPolicy } from './room-policy.tsx';
import { SystemForm } from './system-form.tsx';
import { SystemItem } from './system-item.tsx';

type Open = { form: 'add' } | { form: 'edit'; system: FinishSystem } | null;

function Systems({ canEdit }: { canEdit: boolean }) {
  const systems = useQuery(orpc.finish.systems.queryOptions({ input: { includeInactive: true } }));
  const [open, setOpen] = useState<Open>(null);
  if (systems.error !== null) {
    return <ErrorNote error={systems.error} onAgain={() => void systems.refetch()} />;
  }
  if (systems.data === undefined) return <BusyNote />;
  const key = open === null ? 'none' : open.form === 'add' ? 'add' : open.system.id;
  return (
    <Panel
      title="Finishes"
      actions={
        canEdit ? (
          <Button variant="default" onClick={() => setOpen({ form: 'add' })}>
            Add a finish
          </Button>
        ) : null
      }
    >
      {systems.data.length === 0 ? (
        <EmptyNote title="No finish yet">
          {canEdit
            ? 'Take the data sheet of a finish you use and copy its figures. Nothing is filled in for you.'
            : 'The office copies those the shop uses from their data sheets.'}
        </EmptyNote>
      ) : (
        <Stack gap="xs">
          {systems.data.map((system) => (
            <SystemItem
              key={system.id}
              system={system}
              canEdit={canEdit}
              onEdit={() => setOpen({ form: 'edit', system })}
            />
          ))}
        </Stack>
      )}
      <SystemForm
        key={key}
        opened={open !== null}
        system={open?.form === 'edit' ? open.system : null}
        onClose={() => setOpen(null)}
      />
    </Panel>
  );
}

/** Finishes of the shop, each from its data sheet; the rack and the gun. */
export function FinishSystems({ isOwner }: { isOwner: boolean }) {
  const role = useWho()?.role;
  return (
    <Stack>
      <Systems canEdit={role === 'owner' || role === 'office'} />
      <RoomPolicy isOwner={isOwner} />
    </Stack>
  );
}
