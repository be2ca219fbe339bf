import { Table } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import type { PastCheck } from '../../../shared/contract/scales.ts';
import { orpc } from '../../api/client.ts';
import { momentText } from '../../parts/days.ts';
import { BusyNote, ErrorNote } from '../../parts/notes.tsx';
import classes from './scale-item.module.css';
import { errorText } from './scale-words.ts';

/** Checks of one scale over time, with the error at both loads. */
export function ScaleChecks({ scaleId, name }: { scaleId: string; name: string }) {
  const past = useQuery(orpc.scales.checks.queryOptions({ input: { id: scaleId } }));
  if (past.data === undefined) {
    return past.error === null ? (
      <BusyNote>Reading its checks ...</BusyNote>
    ) : (
      <ErrorNote error={past.error} onAgain={() => void past.refetch()} />
    );
  }
  const { checks, words } = past.data;
  if (checks.length === 0) return <p>It was never checked. Hang two known loads on it.</p>;
  return (
    <>
      <p>{words}</p>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reached by key */}
      <section className={classes.checks} aria-label={`Checks of ${name}`} tabIndex={0}>
        <Table miw={460}>
          <Table.Thead>
            <Table.Tr>
              <Table.Th>Checked</Table.Th>
              <Table.Th>By</Table.Th>
              <Table.Th>Low load</Table.Th>
              <Table.Th>High load</Table.Th>
            </Table.Tr>
          </Table.Thead>
          <Table.Tbody>
            {checks.map((check) => (
              <Check key={check.id} check={check} />
            ))}
          </Table.Tbody>
        </Table>
      </section>
    </>
  );
}

function Check({ check }: { check: PastCheck }) {
  return (
    <Table.Tr>
      <Table.Td>{momentText(check.checkedAt)}</Table.Td>
      <Table.Td className={classes.by}>{check.checkedBy}</Table.Td>
      <Table.Td>{errorText(check.lowLoadLbf, check.lowErrorLbf)}</Table.Td>
      <Table.Td>{errorText(check.highLoadLbf, check.highErrorLbf)}</Table.Td>
    </Table.Tr>
  );
}
