import { expect, test } from 'vitest';
import { forecastRecord } from '../../../core/shop/learned/forecast-record.ts';
import { closeOneJob, manyClosedJobs } from '../../support/closed-jobs.ts';
import { planShop } from '../../support/plan-shop.ts';

test('of 600 closed jobs the last 500 are told, with their method, bites and weighings', async () => {
  const kit = await planShop();
  await closeOneJob(kit);
  await manyClosedJobs(kit, 600);
  const record = await forecastRecord(kit.shop.owner);
  expect(record.jobs).toHaveLength(500);
  expect(record.untold).toEqual([]);
  const [newest] = record.jobs;
  expect(newest).toMatchObject({
    orderId: kit.orderId,
    method: 'narrowing',
    biteMethods: ['narrow'],
    bites: 2,
    weighings: 3,
  });
  expect(newest?.effectiveness).toBeCloseTo(1.05, 6);
  expect(record.inside).toBe(record.jobs.filter(({ isInside }) => isInside).length);
  const days = record.jobs.map(({ closedOn }) => closedOn);
  expect(days).toEqual(days.toSorted().toReversed());
}, 60_000);

test('a closed job that was not weighed after sanding is left out, with why; struck-out bites count nowhere', async () => {
  const kit = await planShop();
  await closeOneJob(kit);
  const { write } = kit.shop.core.shop();
  await write
    .updateTable('removal')
    .set({ struck_reason: 'wrong bow' })
    .where('id', '=', 'bite-1')
    .execute();
  expect((await forecastRecord(kit.shop.owner)).jobs[0]?.bites).toBe(1);
  await write
    .updateTable('reading')
    .set({ struck_reason: 'the rig slipped' })
    .where('phase', '=', 'after-sanding')
    .execute();
  const { jobs, untold } = await forecastRecord(kit.shop.owner);
  expect(jobs).toEqual([]);
  expect(untold).toMatchObject([{ orderId: kit.orderId, method: 'narrowing' }]);
  expect(untold[0]?.why).toContain('28 in AMO');
});
