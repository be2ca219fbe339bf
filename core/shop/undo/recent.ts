import type { Kysely } from 'kysely';
import { sql } from 'kysely';
import type { ContractInputs } from '../../../shared/contract/types.ts';
import type { DoneItem } from '../../../shared/contract/undo.ts';
import type { ShopContext } from '../../storage/context.ts';
import type { Tables } from '../../storage/tables.ts';
import { notFound } from '../record.ts';
import { type CommandQuery, type Done, doneWhere } from './done.ts';
import { type ReadSince, readingSince } from './gone-on.ts';
import { undoTrouble } from './trouble.ts';
import { effectOf, whatOf } from './words.ts';

type Asked = ContractInputs['undo']['recent'];

const latest = 50;

async function refuseUnknown(db: Kysely<Tables>, asked: Asked): Promise<void> {
  const subjects = [
    ['shop_order', 'order', 'orderId' in asked ? asked.orderId : null],
    ['customer', 'customer', 'customerId' in asked ? asked.customerId : null],
    ['bow', 'bow', 'bowId' in asked ? asked.bowId : null],
  ] as const;
  for (const [table, what, id] of subjects) {
    if (id === null) continue;
    const row = await db.selectFrom(table).select('id').where('id', '=', id).executeTakeFirst();
    if (row === undefined) throw notFound(what, id);
  }
}

/** Reads each order once, from the oldest thing in the list on, instead of once for each of them. */
function readingOnce(db: Kysely<Tables>, list: readonly Done[]): ReadSince {
  const read = readingSince(db);
  const oldest = Math.min(...list.map((done) => done.place));
  const orders = new Map<string, ReturnType<ReadSince>>();
  return (orderId) => {
    const known = orders.get(orderId) ?? read(orderId, oldest);
    orders.set(orderId, known);
    return known;
  };
}

async function itemOf(ctx: ShopContext, done: Done, read: ReadSince): Promise<DoneItem> {
  const trouble = await undoTrouble(ctx.read, ctx.actor, done, read);
  return {
    commandId: done.id,
    at: done.at,
    personName: done.personName,
    what: whatOf(done),
    effect: effectOf(done.writes),
    canUndo: trouble === null,
    why: done.undone === null ? (trouble?.message.slice(0, 400) ?? null) : null,
    undoneAt: done.undone?.at ?? null,
    historyIds: done.lines.map((line) => line.id).slice(0, 2000),
  };
}

/** @see contract.undo.recent */
export async function recentlyDone(ctx: ShopContext, asked: Asked): Promise<DoneItem[]> {
  await refuseUnknown(ctx.read, asked);
  const done = await doneWhere(ctx.read, (query) =>
    query
      .$if('orderId' in asked, (q) => onOrder(q, subjectId(asked)))
      .$if('customerId' in asked, (q) => q.where('command.customer_id', '=', subjectId(asked)))
      .$if('bowId' in asked, (q) => q.where('command.bow_id', '=', subjectId(asked)))
      .$if('of' in asked, (q) => q.where('command.id', '=', subjectId(asked)))
      .where('command.undoes_id', 'is', null)
      .where(({ exists, selectFrom }) =>
        exists(
          selectFrom('command_change')
            .select('command_change.seq')
            .whereRef('command_change.command_id', '=', 'command.id'),
        ),
      )
      .orderBy('command.at', 'desc')
      .orderBy(sql`command.rowid`, 'desc')
      .limit(latest),
  );
  const read = readingOnce(ctx.read, done);
  return Promise.all(done.map((each) => itemOf(ctx, each, read)));
}

/** What was done on the order itself, and what was done elsewhere and told there. */
function onOrder(query: CommandQuery, orderId: string): CommandQuery {
  return query.where(({ or, eb, selectFrom }) =>
    or([
      eb('command.order_id', '=', orderId),
      eb(
        'command.id',
        'in',
        selectFrom('order_history')
          .innerJoin('command_change as told', 'told.row_id', 'order_history.id')
          .select('told.command_id')
          .where('told.table_name', '=', 'order_history')
          .where('order_history.order_id', '=', orderId),
      ),
    ]),
  );
}

function subjectId(asked: Asked): string {
  return Object.values(asked)[0] ?? '';
}
