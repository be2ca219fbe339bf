import { Table } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { orpc } from '../../api/client.ts';
import { momentText } from '../../parts/days.ts';
import { BusyNote, EmptyNote, ErrorNote } from '../../parts/notes.tsx';
import { sizeText } from '../../parts/save-file.ts';

/** The backups in the data folder, newest first. */
export function Backups() {
  const backups = useQuery(orpc.system.backups.queryOptions());
  if (backups.error !== null) {
    return <ErrorNote error={backups.error} onAgain={() => void backups.refetch()} />;
  }
  if (backups.data === undefined) return <BusyNote />;
  if (backups.data.length === 0) {
    return <EmptyNote title="No backup yet">Make the first one now.</EmptyNote>;
  }
  return (
    <Table.ScrollContainer minWidth={420} maxHeight={360}>
      <Table stickyHeader>
        <Table.Thead>
          <Table.Tr>
            <Table.Th>Made</Table.Th>
            <Table.Th>File</Table.Th>
            <Table.Th>Size</Table.Th>
          </Table.Tr>
        </Table.Thead>
        <Table.Tbody>
          {backups.data.map(({ name, madeAt, bytes }) => (
            <Table.Tr key={name}>
              <Table.Td>{momentText(madeAt)}</Table.Td>
              <Table.Td style={{ overflowWrap: 'anywhere' }}>{name}</Table.Td>
              <Table.Td>{sizeText(bytes)}</Table.Td>
            </Table.Tr>
          ))}
        </Table.Tbody>
      </Table>
    </Table.ScrollContainer>
  );
}
