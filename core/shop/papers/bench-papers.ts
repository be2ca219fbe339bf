import type { BeforeAfterData } from '../../papers/before-after.ts';
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

/** @throws ShopError CONFLICT where there is no plan to mark out */
export async function markingTemplateOf(
  ctx: ShopContext,
  orderId: string,
  choice: Pick<MarkingTemplateData, 'format' | 'copy' | 'printedAt'>,
): Promise<MarkingTemplateData> {
  const order = await readOrder(ctx.read, orderId);
  const plan = await standingPlan(ctx.read, orderId);
  const fit =
    plan === null ? { ok: true, why: [] } : fitOf(plan, await readFitRecords(ctx.read, order));
  return markingTemplateData(await getOrder(ctx, orderId), plan, fit, choice);
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
