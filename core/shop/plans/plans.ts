import type { ContractInputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import type { PlanFrozen, PlanSummary } from '../../../shared/plan-record.ts';
import { planMethod } from '../../../shared/weight-plan.ts';
import { runCommand } from '../../storage/commands.ts';
import type { OpenShop, ShopContext } from '../../storage/context.ts';
import type { OrderRow, WeightPlanRow } from '../../storage/tables.ts';
import { note } from '../orders/history.ts';
import { readOrder } from '../orders/order-row.ts';
import { changedOf, notFound } from '../record.ts';
import { type FitRecords, fitOf, readFitRecords } from './fit.ts';
import { inputOf, methodOf, responseOf, storedPlans } from './stored.ts';

function summaryOf(row: WeightPlanRow, records: FitRecords, personName: string): PlanSummary {
  return {
    id: row.id,
    rowVersion: row.row_version,
    version: row.version,
    method: planMethod.parse(row.method),
    acceptedAt: row.accepted_at,
    personName,
    confirmedBecause: row.confirmed_because,
    struckReason: row.struck_reason,
    drawIn: row.draw_in,
    weightLbf: row.weight_lbf,
    weightSdLbf: row.weight_sd_lbf,
    targetLbf: row.target_lbf,
    reserveLbf: row.reserve_lbf,
    stopAtLbf: row.stop_at_lbf,
    forecastLbf: row.forecast_lbf,
    bandLbf: [row.forecast_low_lbf, row.forecast_high_lbf],
    tillerTargetIn: row.tiller_target_in,
    sanding: row.sanding,
    allowance: {
      meanThou: row.allowance_mean_thou,
      sdThou: row.allowance_sd_thou,
      jobs: row.allowance_jobs,
    },
    effectiveness: {
      mean: row.effectiveness_mean,
      sd: row.effectiveness_sd,
      jobs: row.effectiveness_jobs,
    },
    dropPerThou: row.drop_per_thou,
    slopeLbfPerIn: row.slope_lbf_per_in,
    braceLbfPerIn: row.brace_lbf_per_in,
    fits: fitOf(row, records),
  };
}

async function personNames(db: OpenShop['read']): Promise<Map<string, string>> {
  const people = await db.selectFrom('person').select(['id', 'name']).execute();
  return new Map(people.map(({ id, name }) => [id, name]));
}

/** Accepted plans of an order, newest first, the struck-out ones too. */
export async function plansOf(shop: OpenShop, order: OrderRow): Promise<PlanSummary[]> {
  const rows = await storedPlans(shop.read, order.id);
  if (rows.length === 0) return [];
  const records = await readFitRecords(shop.read, order);
  const names = await personNames(shop.read);
  return rows.slice(0, 100).map((row) => summaryOf(row, records, names.get(row.person_id) ?? ''));
}

async function planRow(db: OpenShop['read'], id: string): Promise<WeightPlanRow> {
  const row = await db
    .selectFrom('weight_plan')
    .selectAll()
    .where('id', '=', id)
    .executeTakeFirst();
  if (row === undefined) throw notFound('weight plan', id);
  return row;
}

/** @see contract.plans.get */
export async function getPlan(shop: OpenShop, id: string): Promise<PlanFrozen> {
  const row = await planRow(shop.read, id);
  const records = await readFitRecords(shop.read, await readOrder(shop.read, row.order_id));
  const names = await personNames(shop.read);
  const { upper, lower, ...response } = responseOf(row);
  return {
    ...summaryOf(row, records, names.get(row.person_id) ?? ''),
    orderId: row.order_id,
    bowId: row.bow_id,
    limbSetId: row.limb_set_id,
    geometryId: row.geometry_id,
    readingId: row.reading_id,
    input: inputOf(row),
    plan: methodOf(row),
    response: {
      ...response,
      upper: { ...upper, stations: [...upper.stations] },
      lower: { ...lower, stations: [...lower.stations] },
    },
  };
}

/** @see contract.plans.strikeOut */
export function strikeOutPlan(
  ctx: ShopContext,
  input: ContractInputs['plans']['strikeOut'],
): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'plans.strikeOut' }, async (trx) => {
    const found = await planRow(trx.db, input.id);
    trx.about({ orderId: found.order_id, bowId: found.bow_id });
    if (found.struck_reason !== null) {
      throw new ShopError('CONFLICT', 'This plan is already struck out.');
    }
    const row = await trx.update('weight_plan', found.id, input.rowVersion, {
      struck_reason: input.reason,
    });
    await note(trx, ctx, found.order_id, {
      kind: 'strike-out',
      summary: `Weight plan ${found.version} struck out`,
      reason: input.reason,
    });
    return changedOf(row);
  });
}
