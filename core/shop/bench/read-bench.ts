import { createHash } from 'node:crypto';
import type { BenchPolicy } from '../../../shared/bench-policy.ts';
import type { OpenShop } from '../../storage/context.ts';
import type { GlassCheckRow, OrderRow, SandingRow, WeightPlanRow } from '../../storage/tables.ts';
import { benchPolicyOf } from '../bench-policy/policy.ts';
import { openStops, stopsOf } from '../findings/open-stops.ts';
import { isOvershot, isUndershot } from '../gates/conditions.ts';
import { readFacts } from '../gates/facts.ts';
import type { GateFacts } from '../gates/gate-facts.ts';
import { missingAt } from '../gates/gates.ts';
import { routeOf } from '../orders/order-json.ts';
import { fitOf, readFitRecords } from '../plans/fit.ts';
import { standingPlan } from '../plans/stored.ts';
import { storedReadings } from '../readings/stored.ts';
import { type Advice, type AdviceFacts, adviceOf } from './advice.ts';
import { glassWords } from './glass-checks.ts';
import { limbSandingsOf, readStrokes } from './read-strokes.ts';
import { removalParts } from './removal-parts.ts';
import { lastRemovalOf, type Workdown, type WorkdownRows, workdownOf } from './workdown-of.ts';

type Db = OpenShop['read'];

export interface Bench {
  order: OrderRow;
  plan: WeightPlanRow | null;
  rows: WorkdownRows;
  glassChecks: readonly GlassCheckRow[];
  /** Of the limbs, the struck-out ones too. */
  limbSandings: readonly SandingRow[];
  work: Workdown | null;
  facts: AdviceFacts;
  gateFacts: GateFacts;
  policy: BenchPolicy;
  advice: Advice;
  /** Names what the advice rests on. */
  hash: string;
}

/** Rows of the bench of one order, the struck-out ones too, in the order they were made. */
export async function workdownRows(
  db: Db,
  orderId: string,
  plan: WeightPlanRow | null,
): Promise<WorkdownRows> {
  const removals = await db
    .selectFrom('removal')
    .selectAll()
    .where('order_id', '=', orderId)
    .orderBy('planned_at')
    .orderBy('id')
    .execute();
  const { cuts, faces } = await removalParts(db, removals);
  const tillers = await db
    .selectFrom('tiller_reading')
    .selectAll()
    .where('order_id', '=', orderId)
    .orderBy('read_at')
    .orderBy('id')
    .execute();
  const surprises = await db
    .selectFrom('surprise')
    .selectAll()
    .where('order_id', '=', orderId)
    .execute();
  const scales = await db.selectFrom('scale').select(['id', 'resolution_lbf']).execute();
  const readings = await storedReadings(db, [orderId]);
  const measured = await db
    .selectFrom('geometry')
    .select('measured_at')
    .where('id', '=', plan?.geometry_id ?? '')
    .executeTakeFirst();
  const measuredAt = measured?.measured_at ?? null;
  const resolutions = new Map(scales.map((scale) => [scale.id, scale.resolution_lbf]));
  return { plan, readings, removals, cuts, faces, tillers, surprises, resolutions, measuredAt };
}

function glassFacts(checks: readonly GlassCheckRow[], lastRemovalAt: string | null) {
  const last = checks.filter(({ struck_reason }) => struck_reason === null).at(-1);
  return {
    failed: last?.outcome === 'not-ok' ? glassWords(last) : null,
    isCurrent: last !== undefined && (lastRemovalAt === null || last.checked_at > lastRemovalAt),
  };
}

/** The same rows give the same name; one more bite, reading or strike-out gives another. */
function hashOf(bench: Omit<Bench, 'hash' | 'advice' | 'work' | 'gateFacts'>): string {
  const { order, plan, rows, glassChecks, limbSandings, facts, policy } = bench;
  const kept = (
    list: readonly { id: string; row_version: number; struck_reason: string | null }[],
  ) =>
    list
      .filter(({ struck_reason }) => struck_reason === null)
      .map(({ id, row_version }) => `${id} ${row_version}`);
  const rests = [
    [order.id, order.stage, order.going_home, order.target_weight_lbf, order.target_draw_in],
    plan === null ? [] : [plan.id, plan.row_version],
    kept(rows.readings),
    kept(rows.removals),
    kept(rows.tillers),
    kept(rows.surprises),
    kept(glassChecks),
    kept(limbSandings),
    facts.stops,
    facts.fit,
    facts.stripsFirst,
    facts.strokes,
    policy,
  ];
  return createHash('sha256').update(JSON.stringify(rests)).digest('hex').slice(0, 32);
}

/** Everything on the bench of one order, read from one connection. */
export async function readBench(db: Db, order: OrderRow, now: string): Promise<Bench> {
  const plan = await standingPlan(db, order.id);
  const rows = await workdownRows(db, order.id, plan);
  const glassChecks = await db
    .selectFrom('glass_check')
    .selectAll()
    .where('order_id', '=', order.id)
    .orderBy('checked_at')
    .orderBy('id')
    .execute();
  const policy = await benchPolicyOf(db);
  const gateFacts = await readFacts(db, order, now);
  const route = routeOf(order);
  const [strip, weightWork] = [route.indexOf('strip-sand'), route.indexOf('weight-work')];
  const stops = stopsOf(await openStops(db), order).map(({ place }) => `${place}.`);
  const fit = plan === null ? null : fitOf(plan, await readFitRecords(db, order));
  const work = plan === null ? null : workdownOf(plan, rows);
  const limbSandings = await limbSandingsOf(db, order.id);
  const facts: AdviceFacts = {
    order,
    stripsFirst: strip !== -1 && strip < weightWork,
    strokes: work === null ? null : await readStrokes(db, order, { work, limbSandings, now }),
    stops,
    fit,
    undershootAccepted:
      gateFacts.undershootOffered && gateFacts.consent('undershoot') === 'granted',
    offTargetLbf:
      isOvershot(gateFacts) || isUndershot(gateFacts) ? gateFacts.afterSandingLbf : null,
    glass: glassFacts(glassChecks, lastRemovalOf(rows.removals)),
    missing: missingAt('bite', gateFacts),
  };
  const advice = adviceOf(work, rows, facts, policy);
  const bench = { order, plan, rows, glassChecks, limbSandings, facts, policy };
  return { ...bench, work, gateFacts, advice, hash: hashOf(bench) };
}
