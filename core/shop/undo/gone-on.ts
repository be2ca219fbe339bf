import { type Kysely, sql } from 'kysely';
import { entryKinds } from '../../../shared/entries.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Stage } from '../../../shared/stages.ts';
import type { RecordTable } from '../../storage/commands.ts';
import type { EntryRow, OrderRow, Tables } from '../../storage/tables.ts';
import { dayOf } from '../day.ts';
import { routeOf } from '../orders/order-json.ts';
import { stagesBetween } from '../orders/route.ts';
import { type Done, doneWhere, isTouch, type RowWrite, readDone } from './done.ts';
import { stagesOf, whatOf } from './words.ts';

/** What an order has passed never rests on these: a hold keeps it where it is, as long as it stands. */
const besideTheGates: readonly RecordTable[] = ['task', 'hold', 'reminder', 'carrier', 'scale'];

function routeIn(write: RowWrite): Stage[] {
  return routeOf({ route_json: String(write.after?.route_json) });
}

/** Whether the gates this command passed still count: it went forward, and nobody stepped back since. */
function standsPast(later: Done, order: OrderRow): boolean {
  return later.writes.some((write) => {
    const stages = write.id === order.id ? stagesOf(write) : null;
    if (stages === null) return false;
    const entered = stagesBetween(routeIn(write), stages.from, stages.to);
    const route = routeOf(order);
    const now = route.indexOf(order.stage);
    return entered.some((stage) => route.includes(stage) && route.indexOf(stage) <= now);
  });
}

/** A step with a gate of its own: what was taken off a limb, a coat, or an entry of such a step. */
function isStep(write: RowWrite, orderId: string): boolean {
  if (write.before !== null || write.after?.order_id !== orderId) return false;
  if (write.table === 'removal' || write.table === 'coat') return true;
  const item = write.after.item as EntryRow['item'];
  return write.table === 'entry' && entryKinds[item].step !== null;
}

/** Whether the command wrote such a step of this order that nobody has struck out. */
async function standingStep(db: Kysely<Tables>, later: Done, orderId: string): Promise<boolean> {
  for (const table of ['entry', 'removal', 'coat'] as const) {
    const ids = later.writes.filter((write) => write.table === table && isStep(write, orderId));
    const standing = await db
      .selectFrom(table)
      .select('id')
      .where('struck_reason', 'is', null)
      .where(
        'id',
        'in',
        ids.map((step) => step.id),
      )
      .executeTakeFirst();
    if (standing !== undefined) return true;
  }
  return false;
}

const identity = ['bow_id', 'customer_id', 'limb_set_id'] as const;

/** What was noted of one bow must not come to count for another. */
function changedIdentity(later: Done, order: OrderRow): boolean {
  return later.writes.some(
    (write) =>
      write.table === 'shop_order' &&
      write.id === order.id &&
      identity.some((column) => write.before?.[column] !== write.after?.[column]),
  );
}

/** An order as it stands, and what was done on it after a place and not taken back. */
export interface OrderSince {
  order: OrderRow;
  since: readonly Done[];
}

export type ReadSince = (orderId: string, place: number) => Promise<OrderSince | null>;

/** A session that coated several bows is about none of their orders alone. */
function commandsThatCoated(db: Kysely<Tables>, orderId: string) {
  return db
    .selectFrom('command_change')
    .innerJoin('coat', 'coat.id', 'command_change.row_id')
    .select('command_change.command_id')
    .where('command_change.table_name', '=', 'coat')
    .where('coat.order_id', '=', orderId);
}

/** Reads only what can tell that a gate was passed or that the order holds something else. */
export function readingSince(db: Kysely<Tables>): ReadSince {
  return async (orderId, place) => {
    const order = await db
      .selectFrom('shop_order')
      .selectAll()
      .where('id', '=', orderId)
      .executeTakeFirst();
    if (order === undefined) return null;
    const since = await doneWhere(
      db,
      (query) =>
        query
          .where((eb) =>
            eb.or([
              eb('command.order_id', '=', orderId),
              eb('command.id', 'in', commandsThatCoated(db, orderId)),
            ]),
          )
          .where(sql<number>`command.rowid`, '>', place)
          .where('undoing.id', 'is', null)
          .orderBy(sql`command.rowid`),
      ['shop_order', 'entry', 'removal', 'coat'],
    );
    return { order, since };
  };
}

/**
 * Refusal where the order has gone on since and rests on what this command wrote: a gate was
 * passed, a step with a gate was done, or the order now holds another bow or owner.
 */
export async function goneOn(
  db: Kysely<Tables>,
  done: Done,
  read: ReadSince,
): Promise<ShopError | null> {
  const counts = done.writes.some(
    (write) => !isTouch(write) && !besideTheGates.includes(write.table),
  );
  if (done.orderId === null || !counts) return null;
  const found = await read(done.orderId, done.place);
  if (found === null) return null;
  for (const later of found.since) {
    if (later.place <= done.place || takesBackLater(later, done)) continue;
    const rests =
      standsPast(later, found.order) ||
      changedIdentity(later, found.order) ||
      (await standingStep(db, later, done.orderId));
    if (rests) return goneOnSince(db, later, done.orderId);
  }
  return null;
}

/** Something done and taken back since then has left nothing. */
function takesBackLater(later: Done, done: Done): boolean {
  return later.undoesPlace !== null && later.undoesPlace > done.place;
}

async function goneOnSince(db: Kysely<Tables>, later: Done, orderId: string): Promise<ShopError> {
  const told = (await readDone(db, later.id)) ?? later;
  return new ShopError(
    'CONFLICT',
    `The order has gone on since: ${whatOf(told).slice(0, 150)}, on ${dayOf(later.at)}. Move it back first, or strike it out with a reason.`,
    { order: orderId, since: later.at },
  );
}
