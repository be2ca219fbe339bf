import type { BeforeAfterData } from '../../papers/before-after.ts';
import type { WorkOrderData } from '../../papers/data.ts';
import type { MarkingTemplateData } from '../../papers/marking-template-data.ts';
import type { ShopContext } from '../../storage/context.ts';
import { getOrder } from '../orders/detail.ts';
import { readOrder } from '../orders/order-row.ts';
import { fitOf, readFitRecords } from '../plans/fit.ts';
import { standingPlan } from '../plans/stored.ts';
import { getShop } from '../setup/shop.ts';
import { beforeAfterData } from './before-after-data.ts';
import { bowPhotographs } from './before-after-photographs.ts';
import { removalRecords } from './before-after-removed.ts';
import { markingTemplateData } from './marking-template-data.ts';
import { workOrderData } from './work-order-data.ts';
import type { PlanOnPaper } from './work-order-plan-data.ts';

/** @throws ShopError CONFLICT where there is no plan to mark out */
export async function markingTemplateOf(
  ctx: ShopContext,
  orderId: string,
  choice: Pick<MarkingTemplateData, 'format' | 'copy' | 'printedAt'>,
): Promise<MarkingTemplateData> {
  const plan = await planOnPaper(ctx, orderId);
  return markingTemplateData(await getOrder(ctx, orderId), plan, choice);
}

/** The plan that stands, or null. */
async function planOnPaper(ctx: ShopContext, orderId: string): Promise<PlanOnPaper | null> {
  const row = await standingPlan(ctx.read, orderId);
  if (row === null) return null;
  const [acceptedBy = ''] = await namesOf(ctx, [row.person_id]);
  const order = await readOrder(ctx.read, orderId);
  return { row, acceptedBy, fit: fitOf(row, await readFitRecords(ctx.read, order)) };
}

export async function workOrderOf(
  ctx: ShopContext,
  orderId: string,
  choice: Pick<WorkOrderData, 'format' | 'copy' | 'printedAt'>,
): Promise<WorkOrderData> {
  return workOrderData(
    await getOrder(ctx, orderId),
    await getShop(ctx),
    await planOnPaper(ctx, orderId),
    choice,
  );
}

async function namesOf(ctx: ShopContext, ids: readonly string[]): Promise<string[]> {
  const people = await ctx.read
    .selectFrom('person')
    .select(['id', 'name'])
    .where('id', 'in', ids)
    .orderBy('name')
    .execute();
  return people.map(({ name }) => name);
}

export async function beforeAfterOf(
  ctx: ShopContext,
  orderId: string,
  choice: Pick<BeforeAfterData, 'format' | 'copy' | 'printedAt'>,
): Promise<BeforeAfterData> {
  const records = await removalRecords(ctx, orderId);
  const workers = [...new Set(records.removals.map((removal) => removal.person_id))];
  return beforeAfterData(
    await getOrder(ctx, orderId),
    await getShop(ctx),
    records,
    await namesOf(ctx, workers),
    await bowPhotographs(ctx, orderId),
    choice,
  );
}
