import { sql } from 'kysely';
import { readFacts } from '../../../core/shop/gates/facts.ts';
import type { GateFacts } from '../../../core/shop/gates/gate-facts.ts';
import { missingAt } from '../../../core/shop/gates/gates.ts';
import type { RecordTable } from '../../../core/storage/commands.ts';
import type { OrderRow } from '../../../core/storage/tables.ts';
import type { Stage } from '../../../shared/stages.ts';
import type { World } from './world.ts';

export interface Snapshot {
  order: OrderRow;
  facts: GateFacts;
  openStops: number;
  readings: number;
}

const reader = (world: World) => world.shop.core.shop().read;

/** How things stand before and after an act: the program's own facts, and some told by plain SQL. */
export async function snapshot(world: World, orderId: string): Promise<Snapshot> {
  const db = reader(world);
  const order = await db
    .selectFrom('shop_order')
    .selectAll()
    .where('id', '=', orderId)
    .executeTakeFirstOrThrow();
  const { stops } = (
    await sql<{ stops: number }>`
      SELECT count(*) AS stops FROM finding f JOIN shop_order o ON o.id = f.order_id
      WHERE f.grade = 'stop' AND f.resolved_at IS NULL
        AND (f.order_id = ${orderId}
          OR (${order.bow_id} IS NOT NULL AND (f.bow_id = ${order.bow_id} OR o.bow_id = ${order.bow_id})))
    `.execute(db)
  ).rows[0] ?? { stops: 0 };
  const { readings } = await db
    .selectFrom('reading')
    .select((eb) => eb.fn.countAll<number>().as('readings'))
    .where('order_id', '=', orderId)
    .executeTakeFirstOrThrow();
  const facts = await readFacts(db, order, world.shop.core.shop().now());
  return { order, facts, openStops: stops, readings: Number(readings) };
}

/** Stages entered on the way, by the route as it was; empty for a step back. */
function entered(before: OrderRow, to: Stage): Stage[] {
  const route = JSON.parse(before.route_json) as Stage[];
  return route.slice(route.indexOf(before.stage) + 1, route.indexOf(to) + 1);
}

const needNoStop: readonly Stage[] = [
  'agreed',
  'weight-work',
  'final-check',
  'packed',
  'shipped',
  'collected',
];

/** The newest consent of a kind was answered with a yes, told by plain SQL. */
async function granted(world: World, orderId: string, kind: string): Promise<boolean> {
  const { rows } = await sql<{ answer: string | null }>`
    SELECT (SELECT a.answer FROM consent_answer a WHERE a.consent_id = c.id
            ORDER BY a.rowid DESC LIMIT 1) AS answer
    FROM consent c WHERE c.order_id = ${orderId} AND c.kind = ${kind}
    ORDER BY c.rowid DESC LIMIT 1
  `.execute(reader(world));
  return rows[0]?.answer === 'granted';
}

/** The rules nobody may override, checked by other means than the program's own gates. */
async function neverRules(world: World, before: Snapshot, stages: readonly Stage[]) {
  const trouble: string[] = [];
  const { order } = before;
  const home = order.going_home !== null;
  if (!home && before.openStops > 0 && stages.some((stage) => needNoStop.includes(stage))) {
    trouble.push('went on with an open stop finding');
  }
  if (home) return trouble;
  if (stages.includes('weight-work')) {
    const weighed = await reader(world)
      .selectFrom('reading')
      .select('id')
      .where('order_id', '=', order.id)
      .where('phase', '=', 'arrival')
      .where('struck_reason', 'is', null)
      .executeTakeFirst();
    if (weighed === undefined) trouble.push('weight work without an arrival weighing');
  }
  const agreeing = ['agreed', 'weight-work', 'strip-sand', 'finish'] as const;
  if (order.customer_id !== null && agreeing.some((stage) => stages.includes(stage))) {
    if (!(await granted(world, order.id, 'price-and-scope'))) {
      trouble.push('went on without the price agreed');
    }
  }
  return trouble;
}

/** Commands that put an order somewhere without asking gates: back, or where it had been before. */
const placing: readonly string[] = ['orders.takeUpAgain', 'orders.cancel'];

async function lastCommand(world: World, orderId: string) {
  return reader(world)
    .selectFrom('command')
    .select(['id', 'name'])
    .where('order_id', '=', orderId)
    .orderBy(sql`rowid`, 'desc')
    .limit(1)
    .executeTakeFirstOrThrow();
}

/** What an act did that it must not have done; empty where all is well. */
export async function broken(world: World, before: Snapshot, after: Snapshot): Promise<string[]> {
  const trouble: string[] = [];
  if (after.readings > before.readings && before.openStops > 0) {
    trouble.push('a bow with an open stop finding was drawn');
  }
  if (after.order.stage === before.order.stage) return trouble;
  const command = await lastCommand(world, before.order.id);
  if (placing.includes(command.name)) return trouble;
  const stages = entered(before.order, after.order.stage);
  const missing = stages.flatMap((stage) => missingAt(stage, before.facts));
  if (missing.length > 0) {
    const never = missing.filter((item) => item.override === 'never');
    if (never.length > 0) trouble.push(`passed without ${never.map((item) => item.item)}`);
    const said = await reader(world)
      .selectFrom('order_history')
      .innerJoin('command_change', 'command_change.row_id', 'order_history.id')
      .innerJoin('person', 'person.id', 'order_history.person_id')
      .select(['order_history.reason', 'person.role'])
      .where('command_change.command_id', '=', command.id)
      .where('order_history.kind', '=', 'override')
      .execute();
    const byOwner = said.filter((line) => line.role === 'owner' && (line.reason ?? '') !== '');
    if (byOwner.length !== missing.length) {
      trouble.push(`${missing.length} things missing, ${byOwner.length} let pass by the owner`);
    }
  }
  return [...trouble, ...(await neverRules(world, before, stages))];
}

/** The history of an order, read from its start, ends where the order stands. */
export async function historyEndsAt(world: World, orderId: string): Promise<string> {
  const { rows } = await sql<{ from_stage: string | null; to_stage: string }>`
    SELECT from_stage, to_stage FROM order_history
    WHERE order_id = ${orderId} AND to_stage IS NOT NULL ORDER BY rowid
  `.execute(reader(world));
  let at: string | null = null;
  for (const { from_stage: from, to_stage: to } of rows) {
    if (from !== at) return `a step from ${from} while it stood in ${at}`;
    at = to;
  }
  return at ?? 'nowhere';
}

/** Every row that the recorded changes, replayed from the first, do not give as it stands. */
export async function replayDifferences(world: World): Promise<string[]> {
  const db = reader(world);
  const changes = await db
    .selectFrom('command_change')
    .innerJoin('command', 'command.id', 'command_change.command_id')
    .select(['table_name', 'row_id', 'after_json'])
    .orderBy(sql`command.rowid`)
    .orderBy('seq')
    .execute();
  const replayed = new Map<string, string>();
  for (const { table_name: table, row_id: id, after_json: after } of changes) {
    if (after === null) replayed.delete(`${table} ${id}`);
    else replayed.set(`${table} ${id}`, after);
  }
  const differences: string[] = [];
  for (const table of new Set(changes.map((change) => change.table_name))) {
    const rows = (await db
      .selectFrom(table as RecordTable)
      .selectAll()
      .execute()) as {
      id: string;
    }[];
    for (const row of rows) {
      const key = `${table} ${row.id}`;
      const told = JSON.parse(replayed.get(key) ?? 'null') as Record<string, unknown> | null;
      const same = told !== null && Object.entries(row).every(([k, v]) => told[k] === v);
      if (!same) differences.push(key);
      replayed.delete(key);
    }
  }
  return [...differences, ...replayed.keys()];
}
