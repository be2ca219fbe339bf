import { describe, expect, test } from 'vitest';
import { allowanceFrom, effectivenessFrom } from '../../../core/shop/learned/figures.ts';
import { forecastRecord } from '../../../core/shop/learned/forecast-record.ts';
import { shrunk } from '../../../core/shop/learned/shrink.ts';
import { normal } from '../../../demo-data/simulated/normal.ts';
import { usualBenchPolicy } from '../../../shared/bench-policy.ts';
import { planShop } from '../../support/plan-shop.ts';
import { seededRandom } from '../../support/random.ts';

const usual = { mean: 1.4, sd: 0.6 };

describe('what closed jobs make of common practice', () => {
  test('no job: common practice itself', () => {
    expect(shrunk(usual, [])).toEqual({ ...usual, jobs: 0 });
  });

  test('one job moves the mean by a sixth of the way, an odd one by no more than half a spread', () => {
    expect(shrunk(usual, [2]).mean).toBeCloseTo(1.5, 9);
    expect(shrunk(usual, [40]).mean).toBeCloseTo(1.4 + (3 * 0.6) / 6, 6);
    expect(shrunk(usual, [-40]).mean).toBeGreaterThan(1);
  });

  test('many jobs come to their own truth, in mean and spread', () => {
    const random = seededRandom(7);
    const jobs = Array.from({ length: 400 }, () => 2 + 0.3 * normal(random));
    const learned = shrunk(usual, jobs);
    expect(learned.mean).toBeCloseTo(2, 1);
    expect(learned.sd).toBeGreaterThan(0.25);
    expect(learned.sd).toBeLessThan(0.36);
    expect(learned.jobs).toBe(400);
  });

  test('jobs all alike do not make it sure', () => {
    expect(
      shrunk(
        usual,
        Array.from({ length: 500 }, () => 1.4),
      ).sd,
    ).toBeCloseTo(0.24, 9);
  });
});

test('jobs of another construction, sanding or section teach nothing', () => {
  const job = {
    construction: 'glass-laminated' as const,
    sanding: 'full strip' as const,
    section: 'measured' as const,
    allowanceThou: 2,
    effectiveness: 0.9,
  };
  const jobs = [job, job, { ...job, allowanceThou: null, effectiveness: null }];
  const of = { construction: job.construction, sanding: job.sanding };
  expect(allowanceFrom(jobs, of, usualBenchPolicy)).toMatchObject({ jobs: 2 });
  expect(allowanceFrom(jobs, of, usualBenchPolicy).words).toContain('2 closed jobs of this shop');
  const other = { ...of, construction: 'all-wood' as const };
  expect(allowanceFrom(jobs, other, usualBenchPolicy)).toMatchObject({ mean: 1.4, jobs: 0 });
  expect(effectivenessFrom(jobs, 'measured').mean).toBeCloseTo((5 + 1.8) / 7, 5);
  expect(effectivenessFrom(jobs, 'unknown')).toMatchObject({ mean: 1, sd: 0.25, jobs: 0 });
});

/** A job done with a known truth: bites of 0.9 times the model, a strip of 2 thou a face. */
async function closedJob(end: 'shipped' | 'arrived' = 'shipped') {
  const kit = await planShop();
  await kit.accept();
  const [plan] = await kit.plans();
  const write = kit.shop.owner.write;
  kit.shop.clock.advance(3_600_000);
  const bite = {
    id: 'bite-1',
    order_id: kit.orderId,
    bow_id: kit.bowId,
    limb_set_id: null,
    plan_id: plan?.id ?? null,
    method: 'narrow' as const,
    tool: 'scraper',
    edge_radius_in: null,
    modelled_drop: 0.1,
    drop_sd: 0.005,
    forecast_lbf: null,
    forecast_sd_lbf: null,
    planned_at: kit.shop.owner.now(),
    done_at: kit.shop.owner.now(),
    remeasured_at: null,
    note: '',
    person_id: kit.shop.owner.actor.personId,
    struck_reason: null,
    row_version: 1,
  };
  await write.insertInto('removal').values(bite).execute();
  const worked = 52 * (1 - 0.9 * 0.1);
  kit.shop.clock.advance(3_600_000);
  await kit.flow.weigh(kit.scaleId, 'work', worked);
  kit.shop.clock.advance(3_600_000);
  const sanded = worked * (1 - 2 * (plan?.dropPerThou ?? 0));
  await kit.flow.weigh(kit.scaleId, 'after-sanding', sanded);
  await write.updateTable('shop_order').set({ stage: end }).where('id', '=', kit.orderId).execute();
  return { kit, sanded, plan };
}

test('a closed job tells its allowance, its effectiveness and how its forecast fared', async () => {
  const { kit, sanded, plan } = await closedJob();
  const record = await forecastRecord(kit.shop.owner);
  const [job] = record.jobs;
  expect(job?.allowanceThou).toBeCloseTo(2, 6);
  expect(job?.effectiveness).toBeCloseTo(0.9, 6);
  expect(job?.measuredLbf).toBeCloseTo(sanded, 6);
  expect(job?.measuredDropLbf).toBeCloseTo(52 - sanded, 5);
  // Modelled: a tenth by the bite, then the plan's own allowance, which is 1.4 thou a face.
  const expected = 52 * 0.9 * (1 - 1.4 * (plan?.dropPerThou ?? 0));
  expect(job?.forecastLbf).toBeCloseTo(expected, 5);
  const [low, high] = job?.bandLbf ?? [0, 0];
  const width = (plan?.bandLbf[1] ?? 0) - (plan?.bandLbf[0] ?? 0);
  expect(high - low).toBeCloseTo(width, 9);
  expect(job?.isInside).toBe(sanded >= low && sanded <= high);
  expect(record.inside).toBe(job?.isInside ? 1 : 0);
  const strip = record.allowances.find(({ sanding }) => sanding === 'full strip');
  expect(strip?.figure).toMatchObject({ jobs: 1 });
  expect(strip?.figure.mean).toBeCloseTo(1.5, 5);
});

test('an order still in work teaches nothing', async () => {
  const { kit } = await closedJob('arrived');
  expect((await forecastRecord(kit.shop.owner)).jobs).toEqual([]);
});
