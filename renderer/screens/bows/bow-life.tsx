import { Table } from '@mantine/core';
import { Link } from 'wouter';
import type { OrderCard } from '../../../shared/contract/order-card.ts';
import { decimal } from '../../../shared/measure.ts';
import { stageLabels } from '../../../shared/stages.ts';
import { dayOf, fullDay } from '../../parts/days.ts';

interface BowLifeProps {
  /** As marked when the shop first met it; empty when nothing is marked. */
  marked: string;
  orders: readonly OrderCard[];
}

const orderLink = { display: 'inline-block', paddingBlock: 11, whiteSpace: 'nowrap' } as const;
const weight = (lbf: number | null) => (lbf === null ? '' : `${decimal(lbf)}#`);

/** What each order did to the weight, oldest first: repeat jobs start from here. */
export function BowLife({ marked, orders }: BowLifeProps) {
  const oldestFirst = orders.toSorted((a, b) => a.number.localeCompare(b.number));
  return (
    <Table.ScrollContainer minWidth={520}>
      <Table>
        <Table.Caption ta="left">
          {marked === '' ? 'No weight is marked on this bow.' : `Marked ${marked}.`} Weights at the
          draw of each order, AMO.
        </Table.Caption>
        <Table.Thead>
          <Table.Tr>
            <Table.Th>Order</Table.Th>
            <Table.Th>Came with</Table.Th>
            <Table.Th>Last weighed</Table.Th>
            <Table.Th>Target</Table.Th>
            <Table.Th>Stage</Table.Th>
          </Table.Tr>
        </Table.Thead>
        <Table.Tbody>
          {oldestFirst.map(({ id, number, weights, stage, stageSince }) => (
            <Table.Tr key={id}>
              <Table.Td>
                <Link href={`/orders/${id}`} style={orderLink}>
                  {number}
                </Link>
              </Table.Td>
              <Table.Td>{weight(weights.arrivalLbf) || 'not weighed'}</Table.Td>
              <Table.Td>{weight(weights.nowLbf) || 'not weighed'}</Table.Td>
              <Table.Td>
                {weight(weights.targetLbf) || 'none'}
                {weights.targetLbf === null || weights.drawIn === null
                  ? ''
                  : ` @ ${decimal(weights.drawIn, 2)}"`}
              </Table.Td>
              <Table.Td>
                {stageLabels[stage]} since {fullDay(dayOf(stageSince))}
              </Table.Td>
            </Table.Tr>
          ))}
        </Table.Tbody>
      </Table>
    </Table.ScrollContainer>
  );
}
