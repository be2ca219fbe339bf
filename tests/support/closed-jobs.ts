import { normal } from '../../demo-data/simulated/normal.ts';
import type { PlanShop } from './plan-shop.ts';
import { seededRandom } from './random.ts';
import { removalOnRecord } from './removal-on-record.ts';

const hour = 3_600_000;

/** One whole job of the shop: planned, bitten twice, weighed after sanding, sent home. */
export async function closeOneJob(kit: PlanShop): Promise<void> {
  const { shop, orderId } = kit;
  await kit.accept();
  const [plan] = await kit.plans();
  for (const i of [1, 2]) {
    shop.clock.advance(hour);
    await removalOnRecord(shop, orderId, {
      id: `bite-${i}`,
      method: 'narrow',
      plan_id: plan?.id ?? null,
      modelled_drop: 0.06,
    });
  }
  shop.clock.advance(hour);
  const worked = 52 * (1 - 1.05 * (1 - 0.94 ** 2));
  await kit.flow.weigh(kit.scaleId, 'work', worked);
  shop.clock.advance(hour);
  const sanded = worked * (1 - 1.5 * (plan?.dropPerThou ?? 0));
  await kit.flow.weigh(kit.scaleId, 'after-sanding', sanded);
  const { write } = shop.core.shop();
  await write
    .updateTable('shop_order')
    .set({ stage: 'shipped', stage_since: shop.owner.now() })
    .where('id', '=', orderId)
    .execute();
}

/** The closed job many times over, each under an order of its own with weights a little apart. */
export async function manyClosedJobs(kit: PlanShop, count: number): Promise<void> {
  const { write } = kit.shop.core.shop();
  const random = seededRandom(11);
  const order = await write
    .selectFrom('shop_order')
    .selectAll()
    .where('id', '=', kit.orderId)
    .executeTakeFirstOrThrow();
  const plans = await write.selectFrom('weight_plan').selectAll().execute();
  const removals = await write.selectFrom('removal').selectAll().execute();
  const readings = await write.selectFrom('reading').selectAll().execute();
  const pulls = await write.selectFrom('reading_pull').selectAll().execute();
  await write.transaction().execute(async (trx) => {
    for (let i = 1; i <= count; i += 1) {
      const id = `job-${i}`;
      const mine = <Row extends { id: string; order_id: string }>(row: Row): Row => ({
        ...row,
        id: `${row.id}-${i}`,
        order_id: id,
      });
      const off = 0.5 * normal(random);
      const since = new Date(Date.parse(order.stage_since) - i * 20 * hour).toISOString();
      await trx
        .insertInto('shop_order')
        .values({ ...order, id, number: `25-${String(i).padStart(4, '0')}`, stage_since: since })
        .execute();
      for (const row of readings) await trx.insertInto('reading').values(mine(row)).execute();
      for (const plan of plans) {
        const reading_id = plan.reading_id === null ? null : `${plan.reading_id}-${i}`;
        await trx
          .insertInto('weight_plan')
          .values({ ...mine(plan), reading_id })
          .execute();
      }
      for (const row of removals) {
        await trx
          .insertInto('removal')
          .values({ ...mine(row), plan_id: row.plan_id === null ? null : `${row.plan_id}-${i}` })
          .execute();
      }
      for (const pull of pulls) {
        const isLast = readings.at(-1)?.id === pull.reading_id;
        await trx
          .insertInto('reading_pull')
          .values({
            ...pull,
            id: `${pull.id}-${i}`,
            reading_id: `${pull.reading_id}-${i}`,
            force_lbf: pull.force_lbf + (isLast ? off : 0),
          })
          .execute();
      }
    }
  });
}
