import { sql } from 'kysely';
import type { construction } from '../../../shared/bows.ts';
import type { Sanding } from '../../../shared/weight-plan.ts';
import { z } from '../../../shared/zod.ts';
import type { OpenShop } from '../../storage/context.ts';
import type { BowRow, OrderRow, WeightPlanRow } from '../../storage/tables.ts';
import { storedReadings } from '../readings/stored.ts';
import {
  allowanceOf,
  effectivenessOf,
  type JobRows,
  strokesOf,
  weighingsOf,
} from './closed-job.ts';

export type Construction = z.infer<typeof construction>;

/** All but the long answers of a plan, which hundreds of jobs need not be read with. */
const planColumns = [
  'order_id',
  'bow_id',
  'method',
  'reading_id',
  'draw_in',
  'weight_lbf',
  'target_lbf',
  'effectiveness_mean',
  'allowance_mean_thou',
  'forecast_lbf',
  'forecast_low_lbf',
  'forecast_high_lbf',
  'sanding',
  'drop_per_thou',
  'accepted_at',
] as const satisfies readonly (keyof WeightPlanRow)[];
type PlanPart = Pick<WeightPlanRow, (typeof planColumns)[number]> & { section: string };

/** One closed job with a plan, and what it taught. */
export interface ClosedJob {
  order: OrderRow;
  bow: BowRow;
  plan: PlanPart;
  rows: JobRows;
  construction: Construction;
  sanding: Sanding;
  section: 'measured' | 'unknown';
  /** Thousandths off each face; null where the job does not tell. */
  allowanceThou: number | null;
  /** Over each face, of coarse grain; null where they were not counted throughout. */
  strokes: number | null;
  effectiveness: number | null;
}

const section = z.enum(['measured', 'unknown']);

/** The jobs that teach: as many of the last ones. Older ones were done with other hands and tools. */
const mostJobs = 500;

/** Orders that left with their work done, newest first. */
function closedOrders(db: OpenShop['read']): Promise<OrderRow[]> {
  return db
    .selectFrom('shop_order')
    .selectAll()
    .where('stage', 'in', ['shipped', 'collected'])
    .where('going_home', 'is', null)
    .where('id', 'in', (query) =>
      query.selectFrom('weight_plan').select('order_id').where('struck_reason', 'is', null),
    )
    .orderBy('stage_since', 'desc')
    .orderBy('id', 'desc')
    .limit(mostJobs)
    .execute();
}

/** The newest standing plan of each order. */
async function plansByOrder(
  db: OpenShop['read'],
  orderIds: readonly string[],
): Promise<Map<string, PlanPart>> {
  const plans = await db
    .selectFrom('weight_plan')
    .select(planColumns)
    // Only this of the input: reading hundreds of them whole would keep the page waiting.
    .select(sql<string>`input_json ->> '$.input.bow.section'`.as('section'))
    .where('order_id', 'in', orderIds)
    .where('struck_reason', 'is', null)
    .orderBy('version')
    .execute();
  return new Map(plans.map((plan) => [plan.order_id, plan]));
}

function closedJobOf(order: OrderRow, bow: BowRow, rows: JobRows & { plan: PlanPart }): ClosedJob {
  const { plan } = rows;
  return {
    order,
    bow,
    plan,
    rows,
    construction: bow.construction,
    sanding: plan.sanding,
    section: section.parse(plan.section),
    allowanceThou: allowanceOf(rows),
    strokes: strokesOf(rows, bow.construction),
    effectiveness: effectivenessOf(rows),
  };
}

/** Of the limbs alone: what else is sanded takes no weight. */
function limbSandings(db: OpenShop['read'], orderIds: readonly string[]) {
  return db
    .selectFrom('sanding')
    .select(['order_id', 'section', 'substrate', 'grit_json', 'strokes', 'at', 'struck_reason'])
    .where('order_id', 'in', orderIds)
    .where('section', 'in', ['upper-limb', 'lower-limb'])
    .execute();
}

/** Closed jobs that had a weight plan, newest first. */
export async function closedJobs(db: OpenShop['read']): Promise<ClosedJob[]> {
  const orders = await closedOrders(db);
  const ids = orders.map(({ id }) => id);
  if (ids.length === 0) return [];
  const plans = await plansByOrder(db, ids);
  const removals = await db
    .selectFrom('removal')
    .selectAll()
    .where('order_id', 'in', ids)
    .execute();
  const bowIds = [...plans.values()].map(({ bow_id }) => bow_id);
  const bows = await db.selectFrom('bow').selectAll().where('id', 'in', bowIds).execute();
  const bowById = new Map(bows.map((bow) => [bow.id, bow]));
  const removalsBy = Map.groupBy(removals, ({ order_id }) => order_id);
  const sandingsBy = Map.groupBy(await limbSandings(db, ids), ({ order_id }) => order_id);
  const readingsBy = Map.groupBy(await storedReadings(db, ids), ({ order_id }) => order_id);
  return orders.flatMap((order) => {
    const plan = plans.get(order.id);
    const bow = bowById.get(plan?.bow_id ?? '');
    if (plan === undefined || bow === undefined) return [];
    const readings = readingsBy.get(order.id) ?? [];
    const weighings = weighingsOf({ plan, readings });
    const [removed, sandings] = [removalsBy.get(order.id) ?? [], sandingsBy.get(order.id) ?? []];
    const rows = { plan, readings, weighings, removals: removed, sandings };
    return [closedJobOf(order, bow, rows)];
  });
}
