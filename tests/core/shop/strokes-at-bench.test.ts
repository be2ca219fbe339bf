import { expect, test } from 'vitest';
import { getBench } from '../../../core/shop/bench/bench-view.ts';
import { recordSanding } from '../../../core/shop/bench/sanding.ts';
import { recordGrit, strikeOutGrit } from '../../../core/shop/finish/sandings.ts';
import { forecastRecord } from '../../../core/shop/learned/forecast-record.ts';
import { bowSections } from '../../../shared/finish.ts';
import { closeOneJob, manyClosedJobs } from '../../support/closed-jobs.ts';
import { type PlanShop, planShop } from '../../support/plan-shop.ts';
import { newCommandId } from '../../support/test-shop.ts';

const limbSections = bowSections.filter((each) => each.endsWith('limb'));
let kit: PlanShop;

/** Closed jobs whose sanding was counted, and the first of them open again under its plan. */
async function jobsThatCounted(jobs: number): Promise<void> {
  kit = await planShop();
  await kit.flow.grant('alteration-acknowledgement');
  await closeOneJob(kit);
  await manyClosedJobs(kit, jobs);
  const { write } = kit.shop.core.shop();
  const worked = await write
    .selectFrom('reading')
    .select('weighed_at')
    .where('order_id', '=', kit.orderId)
    .where('phase', '=', 'work')
    .executeTakeFirstOrThrow();
  const at = new Date(Date.parse(worked.weighed_at) + 60_000).toISOString();
  for (let i = 1; i <= jobs; i += 1) {
    for (const section of limbSections) {
      await write
        .insertInto('sanding')
        .values({
          id: kit.shop.owner.newId(),
          row_version: 1,
          order_id: `job-${i}`,
          bow_id: kit.bowId,
          section,
          substrate: 'glass',
          grit_json: '{"grit":80,"scale":"P"}',
          strokes: 150,
          wiped: 1,
          is_last: 1,
          note: '',
          at,
          person_id: kit.shop.owner.actor.personId,
          struck_reason: null,
        })
        .execute();
    }
  }
  const gone = { struck_reason: 'another bow' };
  for (const table of ['reading', 'removal'] as const) {
    const mine = write.updateTable(table).set(gone).where('order_id', '=', kit.orderId);
    await (table === 'reading' ? mine.where('phase', '!=', 'arrival') : mine).execute();
  }
  await place('strip-sand');
}

async function place(stage: 'strip-sand' | 'shipped'): Promise<void> {
  const { write } = kit.shop.core.shop();
  await write.updateTable('shop_order').set({ stage }).where('id', '=', kit.orderId).execute();
}

const view = () => getBench(kit.shop.owner, kit.orderId);

async function stepNow() {
  const { step, advice } = await view();
  if (step.kind !== 'sand-only') throw new Error(JSON.stringify(step));
  return { ...step, advice };
}

function sand(grit: number, strokes: number | null, isLast = false) {
  kit.shop.clock.advance(60_000);
  return recordGrit(kit.shop.owner, {
    commandId: newCommandId(),
    orderId: kit.orderId,
    parts: limbSections.map((section) => ({ section, substrate: 'glass' as const })),
    grit: { grit, scale: 'P' },
    strokes,
    wiped: true,
    isLast,
    note: '',
    at: null,
  });
}

async function strikeOut(sandings: readonly { id: string; rowVersion: number }[]): Promise<void> {
  for (const { id, rowVersion } of sandings) {
    const reason = 'the other bow';
    await strikeOutGrit(kit.shop.owner, { commandId: newCommandId(), id, rowVersion, reason });
  }
}

test('the owner reads what a hundred strokes take', async () => {
  await jobsThatCounted(4);
  const { strokes, jobs } = await forecastRecord(kit.shop.owner);
  const took = jobs.flatMap(({ allowanceThou }) => allowanceThou ?? []);
  expect(took).toHaveLength(4);
  const mean = took.reduce((sum, one) => sum + one, 0) / took.length;
  expect(strokes).toMatchObject([{ construction: 'glass-laminated', jobs: 4 }]);
  expect(strokes[0]?.aHundred?.mean).toBeCloseTo((100 * mean) / 150, 9);
});

test('stroke by stroke the bench says how far the sanding is, and where it took too much', async () => {
  await jobsThatCounted(4);
  const before = await stepNow();
  expect(before.why).toEqual([]);
  await sand(80, 60);
  const first = await stepNow();
  expect(first.why).toEqual([expect.stringMatching(/took about 0\.\d+ ± .*, of 1\.4 planned\.$/)]);
  expect(first.forecast.endLbf).toBeCloseTo(before.forecast.endLbf, 9);
  expect(first.advice).not.toBe(before.advice);
  const { recorded } = await sand(120, 300);
  const tooMuch = await stepNow();
  expect(tooMuch.why).toContain('Weigh it before another stroke.');
  expect(tooMuch.forecast.endLbf).toBeLessThan(before.forecast.endLbf - 1);
  await strikeOut(recorded);
  expect((await stepNow()).why).toEqual(first.why);
});

test('a grit that was not counted: the allowance stands by itself', async () => {
  await jobsThatCounted(4);
  const before = await stepNow();
  await sand(80, 300);
  await sand(180, null);
  const { why, forecast } = await stepNow();
  expect(why).toEqual([]);
  expect(forecast.endLbf).toBeCloseTo(before.forecast.endLbf, 9);
});

test('done, the removal on record is what allowance and strokes say together', async () => {
  await jobsThatCounted(4);
  await sand(80, 100);
  await sand(320, 400, true);
  const { advice, why } = await stepNow();
  const said = why[0]?.match(/about ([\d.]+) ± .* sanding counts as ([\d.]+)\.$/);
  const [byStrokes, inAll] = [Number(said?.[1]), Number(said?.[2])];
  expect(Math.abs(inAll - 1.4)).toBeLessThan(Math.abs(byStrokes - 1.4));
  const done = await recordSanding(kit.shop.owner, {
    commandId: newCommandId(),
    orderId: kit.orderId,
    advice,
    tool: '320 grit',
    note: '',
  });
  expect(done).toEqual(expect.objectContaining({ outcome: 'recorded' }));
  const { read } = kit.shop.core.shop();
  const faces = await read
    .selectFrom('removal_face')
    .innerJoin('removal', 'removal.id', 'removal_face.removal_id')
    .select('done_thou')
    .where('order_id', '=', kit.orderId)
    .where('method', '=', 'strip')
    .execute();
  expect(faces).toHaveLength(4);
  for (const { done_thou } of faces) expect(done_thou).toBeCloseTo(inAll, 2);
  expect((await view()).step.kind).not.toBe('sand-only');
});

test('two jobs are too few: nothing is said, nothing is reckoned', async () => {
  await jobsThatCounted(2);
  await sand(80, 400);
  expect((await stepNow()).why).toEqual([]);
});
