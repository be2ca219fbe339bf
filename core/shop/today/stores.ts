import type { TodayItem, TodayKind } from '../../../shared/contract/today.ts';
import type { Room } from '../../../shared/stages.ts';
import { type Category, quantityText } from '../../../shared/stores.ts';
import { expired } from '../../schedule/issue.ts';
import { oneLine } from '../orders/history.ts';
import { type ExpiringStock, expiringLots } from '../stores/expiring.ts';
import type { Shelf } from '../stores/shelf.ts';

const wet: readonly Category[] = ['finish', 'hardener', 'thinner', 'solvent'];

/** Where somebody has it in the hand. */
const roomOf = ({ row }: Shelf): Room => (wet.includes(row.category) ? 'finish room' : 'bench');

interface Said {
  kind: TodayKind;
  what: string;
  dueOn: string | null;
  forRoom: Room;
}

const aboutShelf = ({ row }: Shelf, { what, ...said }: Said): TodayItem => ({
  ...said,
  group: 'stores',
  orderId: null,
  number: null,
  who: row.name,
  what: oneLine(what, 600),
  since: null,
  forPersonId: null,
  forPersonName: null,
  taskId: null,
  taskRowVersion: null,
  consumableId: row.id,
  opens: null,
});

/** Containers of one lot that end on one day: a case of cans is one line, not twelve. */
function lotLine(shelf: Shelf, lots: readonly [ExpiringStock, ...ExpiringStock[]], day: string) {
  const [first] = lots;
  const left = lots.reduce((sum, { onHand }) => sum + onHand, 0);
  const containers = lots.length === 1 ? '' : ` (${lots.length} containers)`;
  const isOver = expired(first, day);
  const todo = isOver ? 'it has expired, set it aside' : 'use it up';
  return aboutShelf(shelf, {
    kind: isOver ? 'expired-lot' : 'expiring-lot',
    what: `Lot ${first.name}${containers}, ${quantityText(left, shelf.row.unit)}: ${todo}.`,
    dueOn: first.expiresOn,
    forRoom: roomOf(shelf),
  });
}

function lotLines(shelf: Shelf, day: string): TodayItem[] {
  const alike = Map.groupBy(
    expiringLots(shelf.lots, day),
    ({ name, expiresOn }) => `${expiresOn} ${name}`,
  );
  return [...alike.values()].flatMap(([first, ...rest]) =>
    first === undefined ? [] : [lotLine(shelf, [first, ...rest], day)],
  );
}

function orderLine(shelf: Shelf): TodayItem[] {
  if (!shelf.marks.includes('order')) return [];
  const { row, reorder, inDate } = shelf;
  const amount =
    reorder.orderQuantity === null ? 'more' : quantityText(reorder.orderQuantity, row.unit);
  const left = inDate > 0 ? `${quantityText(inDate, row.unit)} in date` : 'none in date';
  const what = `Order ${amount}: ${left}.`;
  return [aboutShelf(shelf, { kind: 'time-to-order', what, dueOn: null, forRoom: 'office' })];
}

/** Lots that have expired or soon will, and what has come to its reorder point. */
export function storesItems(shelves: readonly Shelf[], day: string): TodayItem[] {
  return shelves.flatMap((shelf) => [...lotLines(shelf, day), ...orderLine(shelf)]);
}
