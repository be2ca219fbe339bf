import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { forecastRecord } from '../../core/shop/learned/forecast-record.ts';
import { storedReadings } from '../../core/shop/readings/stored.ts';
import type { OpenShop } from '../../core/storage/context.ts';
import { closeOneJob, manyClosedJobs } from '../support/closed-jobs.ts';
import { furnishShop } from '../support/furnish-shop.ts';
import { planShop } from '../support/plan-shop.ts';

/**
 * The record of the forecasts over 600 closed jobs, beside nothing but reading the rows it is made
 * from, in one run: what is reckoned may cost as much again, and must not grow faster than the jobs.
 */
const jobs = 600;
const asked = 2;
const runs = 15;

async function readRows({ read }: OpenShop): Promise<void> {
  const orders = await read.selectFrom('shop_order').selectAll().limit(500).execute();
  const ids = orders.map(({ id }) => id);
  await storedReadings(read, ids);
  await read.selectFrom('removal').selectAll().where('order_id', 'in', ids).execute();
  await read
    .selectFrom('weight_plan')
    .select(['order_id', 'bow_id', 'draw_in', 'weight_lbf', 'forecast_lbf', 'accepted_at'])
    .where('order_id', 'in', ids)
    .execute();
}

/** Best of several, milliseconds of processor time. */
async function time(work: () => Promise<unknown>): Promise<number> {
  let best = Number.POSITIVE_INFINITY;
  for (let i = 0; i < runs; i += 1) {
    const start = process.cpuUsage();
    await work();
    const { user, system } = process.cpuUsage(start);
    best = Math.min(best, (user + system) / 1000);
  }
  return best;
}

const folder = mkdtempSync(join(tmpdir(), 'tillermark-bench-'));
const kit = await planShop(true, await furnishShop(folder));
await closeOneJob(kit);
await manyClosedJobs(kit, jobs);
const shop = kit.shop.owner;
const rowsMs = await time(() => readRows(shop));
const recordMs = await time(() => forecastRecord(shop));
const line = (what: string, ms: number) =>
  console.log(`${what.padEnd(44)} ${ms.toFixed(1).padStart(7)} ms`);
line('reading the rows', rowsMs);
line(`the forecast record, ${jobs} closed jobs`, recordMs);
const ratio = recordMs / rowsMs;
console.log(`${ratio.toFixed(2)} times the reading; ${asked} are asked`);
await kit.shop.core.close();
rmSync(folder, { recursive: true, force: true });
process.exit(ratio <= asked ? 0 : 1);
