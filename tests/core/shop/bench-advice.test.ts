import { expect, test } from 'vitest';
import { type AdviceFacts, adviceOf } from '../../../core/shop/bench/advice.ts';
import { sentenceOf } from '../../../core/shop/bench/bench-words.ts';
import { limitsOf } from '../../../core/shop/bench/bite-limits.ts';
import { sandingsOf, waysOf } from '../../../core/shop/bench/bite-method.ts';
import { type Bench, readBench } from '../../../core/shop/bench/read-bench.ts';
import { type Workdown, workdownOf } from '../../../core/shop/bench/workdown-of.ts';
import { readOrder } from '../../../core/shop/orders/order-row.ts';
import { usualBenchPolicy } from '../../../shared/bench-policy.ts';
import { type BenchJob, benchJob } from '../../support/bench-job.ts';

async function benchOf(job: BenchJob): Promise<Bench & { work: Workdown }> {
  const { read, now } = job.kit.shop.core.shop();
  const bench = await readBench(read, await readOrder(read, job.orderId), now());
  if (bench.work === null) throw new Error('no plan');
  return { ...bench, work: bench.work };
}

function stepOf(
  { work, rows, facts, policy }: Bench & { work: Workdown },
  change: Partial<AdviceFacts> & { weightLbf?: number; strips?: number } = {},
) {
  const { weightLbf = work.replay.state.weightLbf, strips = work.strips, ...other } = change;
  const state = { ...work.replay.state, weightLbf };
  const at = { ...work, strips, replay: { ...work.replay, state } };
  return adviceOf(at, rows, { ...facts, ...other }, policy).step;
}

const sanding = { stage: 'strip-sand', going_home: null } as const;
const working = { stage: 'weight-work', going_home: null } as const;

test('sanding alone takes it once no bite fits above it, and where depends on the route', async () => {
  const bench = await benchOf(await benchJob());
  expect(stepOf(bench)).toMatchObject({ kind: 'bite', method: 'narrow' });
  expect(stepOf(bench, { weightLbf: 46.9 })).toMatchObject({ kind: 'sand-only', here: false });
  expect(stepOf(bench, { order: sanding })).toMatchObject({ kind: 'sand-only', here: true });
  expect(stepOf(bench, { order: sanding, strips: 1, weightLbf: 46 })).toMatchObject({
    kind: 'bite',
    method: 'strokes',
    isLightPass: true,
  });
  expect(stepOf(bench, { order: sanding, strips: 1, weightLbf: 45.1 }).kind).not.toBe('bite');
  expect(stepOf(bench, { order: sanding, strips: 1, weightLbf: 44.9 }).kind).toBe('at-target');
});

test('stripped before the weight work: worked in between, sanded once more where it stands', async () => {
  const bench = await benchOf(await benchJob());
  const first = { stripsFirst: true };
  expect(stepOf(bench, { ...first, order: sanding })).toMatchObject({
    kind: 'sand-only',
    here: true,
  });
  expect(stepOf(bench, { ...first, order: sanding, strips: 1 }).kind).toBe('not-at-bench');
  expect(stepOf(bench, { ...first, strips: 1 })).toMatchObject({ kind: 'bite', method: 'narrow' });
  const near = { ...first, strips: 1, weightLbf: 46.1 };
  expect(stepOf(bench, near)).toMatchObject({ kind: 'sand-only', here: true });
  expect(stepOf(bench, { ...first, order: working, strips: 2, weightLbf: 46 })).toMatchObject({
    kind: 'bite',
    method: 'strokes',
  });
  const uncounted = { stripsFirst: true, strokes: null };
  expect(sandingsOf({ ...bench.work, strips: 1 }, uncounted, usualBenchPolicy)).toMatchObject({
    toCome: { mean: 0.6, sd: 0.3 },
    betweenSandings: true,
  });
  const light = { ...bench.work.plan, sanding: 'final sanding only' as const };
  const once = sandingsOf({ plan: light, strips: 1 }, uncounted, usualBenchPolicy);
  expect(once.toCome).toBeNull();
});

test('under its target the customer decides, and what was accepted is at its target', async () => {
  const bench = await benchOf(await benchJob());
  expect(stepOf(bench, { weightLbf: 45.5 })).toMatchObject({
    kind: 'undershot',
    why: [expect.stringMatching(/still to come it ends [\d.]+ lb under/), expect.anything()],
  });
  const under = { order: sanding, strips: 1, weightLbf: 44.2 };
  expect(stepOf(bench, under)).toMatchObject({
    kind: 'undershot',
    byLbf: expect.closeTo(0.8, 6),
    why: ['It stands 0.8 lb under the target.', expect.stringContaining('The office')],
  });
  expect(stepOf(bench, { ...under, undershootAccepted: true }).kind).toBe('at-target');
});

test('what comes first comes first', async () => {
  const job = await benchJob();
  await job.until('weigh');
  const bench = await benchOf(job);
  const glass = { failed: null, isCurrent: false };
  expect(stepOf(bench, { glass }).kind).toBe('glass-check');
  expect(stepOf(bench, { stops: ['lower fade.'], glass }).kind).toBe('stop-finding');
  expect(stepOf(bench, { fit: { ok: false, why: ['Changed.'] }, glass })).toEqual({
    kind: 'plan-does-not-fit',
    why: ['Changed.'],
  });
  expect(stepOf(bench, { order: { stage: 'weight-work', going_home: 'withdrawn' } }).kind).toBe(
    'not-at-bench',
  );
});

test('a bite near a limit of the shop is refused, with its figure and the place', async () => {
  const bench = await benchOf(await benchJob());
  const strict = {
    ...usualBenchPolicy,
    limits: {
      ...usualBenchPolicy.limits,
      leastSideStiffness: { longbow: 0.9, hybrid: 0.9, recurve: 0.9 },
    },
  };
  const { step } = adviceOf(bench.work, bench.rows, bench.facts, strict);
  expect(step).toMatchObject({
    kind: 'limit',
    why: [
      expect.stringMatching(/^Width: .* in would be left .* limb; .* 90 % of its side stiffness/),
    ],
  });
  const within = limitsOf(bench.work, usualBenchPolicy, null);
  const limb = { cuts: [], face: 'both' as const, backThou: 0, edgeRadiusIn: null };
  const off = (bellyThou: number) => ({
    upper: { ...limb, bellyThou: 0 },
    lower: { ...limb, bellyThou },
  });
  expect(within(off(4))).toBeNull();
  expect(within(off(7))).toMatch(/^Glass: 0\.038 in would be left on the belly of the lower limb/);
});

test('narrowing and thinning: what the plan narrows first, then thinning alone', async () => {
  const { work } = await benchOf(await benchJob(1, { method: 'mixed' }));
  const kinds = (at: Workdown) =>
    waysOf(at, usualBenchPolicy, 1.4).map(({ method }) => method.kind);
  expect(kinds(work)).toEqual(['narrow', 'thin both faces']);
  expect(kinds({ ...work, narrowedIn: { upper: 0.2, lower: 0.2 } })).toEqual(['thin both faces']);
  const none = { ...work, plan: { ...work.plan, method: 'sanding' } };
  expect(kinds(none)).toEqual([]);
});

test('widths of a plan made after a bite are those measured after it', async () => {
  const job = await benchJob();
  await job.until('bite');
  await job.step();
  await job.until('bite');
  const before = await benchOf(job);
  const widths = ({ work }: { work: Workdown }) =>
    work.response.upper.stations.map(({ widthIn }) => widthIn);
  await job.kit.accept();
  const after = await benchOf(job);
  expect(after.work.plan.version).toBe(2);
  expect(after.work.bitesTaken).toBe(0);
  widths(after).forEach((widthIn, i) => {
    expect(widthIn).toBeCloseTo(widths(before)[i] ?? 0, 6);
  });
  const between = { ...after.rows, cuts: after.rows.cuts.filter((cut) => cut.from_fade_in !== 8) };
  const guessed = workdownOf(after.work.plan, between);
  const at = guessed.response.upper.stations.findIndex(({ fromFadeIn }) => fromFadeIn === 8);
  expect(widths({ work: guessed })[at]).toBeLessThan(
    after.work.planResponse.upper.stations[at]?.widthIn ?? 0,
  );
});

test('at its target by all weighings, off it by the last one: weighed once more, unless that was accepted', async () => {
  const bench = await benchOf(await benchJob());
  const done = { order: sanding, strips: 1, weightLbf: 44.9 };
  expect(stepOf(bench, { ...done, offTargetLbf: null }).kind).toBe('at-target');
  const again = stepOf(bench, { ...done, offTargetLbf: 44.3 });
  expect(again).toEqual({ kind: 'weigh-again', differs: { lastLbf: 44.3, allLbf: 44.9 } });
  expect(sentenceOf(again)).toBe(
    'Weigh once more: the last weighing says 44.3 lb, all of them together 44.9 lb.',
  );
  expect(stepOf(bench, { ...done, offTargetLbf: 44.3, undershootAccepted: true }).kind).toBe(
    'at-target',
  );
});
