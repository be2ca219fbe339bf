import { Button, Table } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { Person } from '../../../shared/people.ts';
import { orpc } from '../../api/client.ts';
import { BusyNote, ErrorNote } from '../../parts/notes.tsx';
import { Panel } from '../../parts/panel.tsx';
import { PersonForm } from './person-form.tsx';

/** Who works here and as what. Nobody is ever deleted: their name stands in the history. */
export function People({ isOwner }: { isOwner: boolean }) {
  const people = useQuery(orpc.people.list.queryOptions());
  const [open, setOpen] = useState<Person | 'new' | null>(null);
  if (people.error !== null) {
    return <ErrorNote error={people.error} onAgain={() => void people.refetch()} />;
  }
  if (people.data === undefined) return <BusyNote />;
  return (
    <Panel
      title="People"
      actions={
        isOwner ? (
          <Button variant="default" onClick={() => setOpen('new')}>
            Add a person
          </Button>
        ) : null
      }
    >
      <Table.ScrollContainer minWidth={318}>
        <Table verticalSpacing="xs" horizontalSpacing={6}>
          <Table.Thead>
            <Table.Tr>
              <Table.Th>Initials</Table.Th>
              <Table.Th>Name</Table.Th>
              <Table.Th>Works as</Table.Th>
              <Table.Th>Here</Table.Th>
              {isOwner ? <Table.Th>Change</Table.Th> : null}
            </Table.Tr>
          </Table.Thead>
          <Table.Tbody>
            {people.data.map((person) => (
              <Table.Tr key={person.id}>
                <Table.Td fw={600}>{person.initials}</Table.Td>
                <Table.Td style={{ overflowWrap: 'anywhere' }}>{person.name}</Table.Td>
                <Table.Td>{person.role}</Table.Td>
                <Table.Td>{person.active ? 'yes' : 'has left'}</Table.Td>
                {isOwner ? (
                  <Table.Td>
                    <Button
                      variant="subtle"
                      px={6}
                      aria-label={`Change ${person.name}`}
                      onClick={() => setOpen(person)}
                    >
                      Change
                    </Button>
                  </Table.Td>
                ) : null}
              </Table.Tr>
            ))}
          </Table.Tbody>
        </Table>
      </Table.ScrollContainer>
      <PersonForm
        key={open === null ? 'none' : keyOf(open)}
        open={open}
        onClose={() => setOpen(null)}
      />
    </Panel>
  );
}

function keyOf(open: Person | 'new'): string {
  return open === 'new' ? 'new' : open.id;
}
