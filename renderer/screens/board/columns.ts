import type { OrderCard } from '../../../shared/contract/order-card.ts';
import { closedStages, roomOf, type Stage, stages } from '../../../shared/stages.ts';
import type { BoardFilter } from './filter.ts';

export interface BoardColumn {
  stage: Stage;
  cards: OrderCard[];
}

/** Due first, then what has no date; equal dates by number. */
function byDue(a: OrderCard, b: OrderCard): number {
  const first = a.promisedOn ?? '9999';
  const second = b.promisedOn ?? '9999';
  return first === second ? a.number.localeCompare(b.number) : first < second ? -1 : 1;
}

/**
 * Columns in route order: the stages that some order of the board stands in or still comes to.
 * Closed stages, and rooms that the filter leaves out, have none.
 */
export function columnsOf(
  all: readonly OrderCard[],
  shown: readonly OrderCard[],
  filter: Pick<BoardFilter, 'room' | 'closed'>,
): BoardColumn[] {
  const used = new Set(all.flatMap((card) => [card.stage, ...card.route]));
  const open = stages.filter(
    (stage) =>
      used.has(stage) &&
      (filter.closed || !closedStages.includes(stage)) &&
      (filter.room === 'all' || roomOf[stage] === filter.room),
  );
  const byStage = Map.groupBy(shown, (card) => card.stage);
  return open.map((stage) => ({ stage, cards: (byStage.get(stage) ?? []).toSorted(byDue) }));
}
