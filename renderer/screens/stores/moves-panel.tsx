import { Table } from '@mantine/core';
import { Link } from 'wouter';
import type { ConsumableDetail, StockMove } from '../../../shared/contract/stores.ts';
import { moveLabels, quantityText, type StockUnit } from '../../../shared/stores.ts';
import { momentText } from '../../parts/days.ts';
import { Panel } from '../../parts/panel.tsx';
import classes from './stores.module.css';

function Move({ move, unit }: { move: StockMove; unit: StockUnit }) {
  const amount = quantityText(move.quantity, unit);
  const whatFor = [move.batchName ?? '', move.reason].filter((part) => part !== '').join(': ');
  return (
    <Table.Tr>
      <Table.Td>{momentText(move.at)}</Table.Td>
      <Table.Td>{moveLabels[move.kind]}</Table.Td>
      <Table.Td className={classes.number}>{move.quantity > 0 ? `+${amount}` : amount}</Table.Td>
      <Table.Td className={classes.words}>{move.lotName}</Table.Td>
      <Table.Td className={classes.words}>
        {move.orderId === null ? null : (
          <>
            <Link href={`/orders/${move.orderId}`}>{move.orderNumber}</Link>{' '}
          </>
        )}
        {whatFor}
      </Table.Td>
      <Table.Td>{move.personName}</Table.Td>
    </Table.Tr>
  );
}

/** What came and went, newest first. Nothing of it is ever changed. */
export function MovesPanel({ detail }: { detail: ConsumableDetail }) {
  if (detail.moves.length === 0) return null;
  return (
    <Panel title="Moves">
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reached by key */}
      <section className={classes.moves} aria-label="Moves, newest first" tabIndex={0}>
        <Table miw={600}>
          <Table.Thead>
            <Table.Tr>
              <Table.Th>When</Table.Th>
              <Table.Th>What</Table.Th>
              <Table.Th className={classes.number}>Amount</Table.Th>
              <Table.Th>Lot</Table.Th>
              <Table.Th>For</Table.Th>
              <Table.Th>Who</Table.Th>
            </Table.Tr>
          </Table.Thead>
          <Table.Tbody>
            {detail.moves.map((move) => (
              <Move key={move.id} move={move} unit={detail.unit} />
            ))}
          </Table.Tbody>
        </Table>
      </section>
      <p className={classes.quiet} style={{ margin: '8px 0 0' }}>
        {detail.moreMoves ? 'Only the newest are shown. ' : ''}Moves stay as they are: a mistake is
        counted again or booked back.
      </p>
    </Panel>
  );
}
