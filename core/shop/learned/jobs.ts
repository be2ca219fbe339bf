import type { construction } from '../../../shared/bows.ts';
import type { Sanding } from '../../../shared/weight-plan.ts';
import { z } from '../../../shared/zod.ts';
import type { OpenShop } from '../../storage/context.ts';
import type { BowRow, OrderRow, WeightPlanRow } from '../../storage/tables.ts';
import { storedReadings } from '../readings/stored.ts';
import { allowanceOf, effectivenessOf, type JobRows } from './closed-job.ts';

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
  'forecast_lbf',
  'forecast_low_lbf',
  'forecast_high_lbf',
  'sanding',
  'drop_per_thou',
  'accepted_at',
  'input_json',
] as const satisfies readonly (keyof WeightPlanRow)[];
type PlanPart = Pick<WeightPlanRow, (typeof planColumns)[number]>;

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
  effectiveness: number | null;
}

/** Only this of the input: reading hundreds of them whole would keep the page waiting. */
const sectionPart = z.object({
  input: z.object({ bow: z.object({ section: z.enum(['measured', 'unknown']) }) }),
});

function sectionOf(plan: PlanPart): ClosedJob['section'] {
  return sectionPart.parse(JSON.parse(plan.input_json)).input.bow.section;
}

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

/** Closed jobs that had a weight plan, newest first. */
export async function closedJobs(db: OpenShop['read']): Promise<ClosedJob[]> {
  const orders = await closedOrders(db);
  const ids = orders.map(({ id }) => id);
  if (ids.length === 0) return [];
  const plans = await db
    .selectFrom('weight_plan')
    .select(planColumns)
    .where('order_id', 'in', ids)
    .where('struck_reason', 'is', null)
    .orderBy('version', 'desc')
    .execute();
  const removals = await db
    .selectFrom('removal')
    .selectAll()
    .where('order_id', 'in', ids)
    .execute();
  const bows = await db
    .selectFrom('bow')
    .selectAll()
    .where(
      'id',
      'in',
      plans.map(({ bow_id }) => bow_id),
    )
    .execute();
  const readings = Map.groupBy(await storedReadings(db, ids), ({ order_id }) => order_id);
  return orders.flatMap((order) => {
    const plan = plans.find(({ order_id }) => order_id === order.id);
    const bow = bows.find(({ id }) => id === plan?.bow_id);
    if (plan === undefined || bow === undefined) return [];
    const rows: JobRows = {
      plan,
      readings: readings.get(order.id) ?? [],
      removals: removals.filter(({ order_id }) => order_id === order.id),
    };
    return [
      {
        order,
        bow,
        plan,
        rows,
        construction: bow.construction,
        sanding: plan.sanding,
        section: sectionOf(plan),
        allowanceThou: allowanceOf(rows),
        effectiveness: effectivenessOf(rows),
      },
    ];
  });
}
