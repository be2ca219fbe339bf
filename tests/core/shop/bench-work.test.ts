import { expect, test } from 'vitest';
import { getBench } from '../../../core/shop/bench/bench-view.ts';
import { readBench } from '../../../core/shop/bench/read-bench.ts';
import { takeBite } from '../../../core/shop/bench/take-bite.ts';
import { addFinding } from '../../../core/shop/findings/findings.ts';
import { missingAt } from '../../../core/shop/gates/gates.ts';
import { readOrder } from '../../../core/shop/orders/order-row.ts';
import { strikeOutReading } from '../../../core/shop/readings/readings.ts';
import { benchJob } from '../../support/bench-job.ts';
import { planShop } from '../../support/plan-shop.ts';
import { newCommandId } from '../../support/test-shop.ts';

test.each([1, 4])(
  'a whole job by advice ends within a pound of its target (bow %i)',
  async (seed) => {
    const job = await benchJob(seed);
    const last = await job.finish();
    expect(last.step.kind).toBe('at-target');
    expect(last.stopAtLbf).toBeNull();
    expect(Math.abs(job.world.trueLbf - 45)).toBeLessThan(1);
    expect(Math.abs(job.world.trueTillerIn - 1 / 16)).toBeLessThan(1 / 16);
    expect(job.done.slice(0, 6)).toEqual([
      'bite',
      'remeasure',
      'glass-check',
      'read-tiller',
      'weigh',
      'bite',
    ]);
    expect(job.done).toContain('sand');
    expect(job.done).toContain('light pass');
    expect(last.bitesTaken).toBe(
      job.done.filter((kind) => kind === 'bite' || kind === 'light pass').length,
    );
    const removals = last.log.filter(({ kind }) => kind === 'removal');
    expect(removals).toHaveLength(last.bitesTaken + 1);
    expect(removals.at(-1)?.what).toMatch(/^Narrowed: upper limb .* in total; lower limb /);
  },
);

test('the first bite takes no more than its part, and what it rests on has a name', async () => {
  const job = await benchJob();
  const view = await job.view();
  if (view.step.kind !== 'bite') throw new Error(view.step.kind);
  const { forecast, upper, lower, step, method } = view.step;
  expect(method).toBe('narrow');
  expect(step).toBe(1 / 64);
  // 52 lb down to the 45.5 lb that are to be left after sanding: two fifths of it at the most.
  expect(52 - forecast.weightLbf).toBeLessThanOrEqual(0.4 * (52 - (view.stopAtLbf ?? 0)) + 0.2);
  expect(forecast.endLbf).toBeLessThan(forecast.weightLbf);
  for (const { cuts } of [upper, lower]) {
    expect(cuts[0]).toMatchObject({ fromFadeIn: 2, offLeftIn: 0, offRightIn: 0 });
    for (const { offLeftIn } of cuts) expect(Number.isInteger(offLeftIn * 64)).toBe(true);
  }
  expect((await job.view()).advice).toBe(view.advice);
});

test('a removal keeps the widths before it at every place, and measuring again replaces its drop', async () => {
  const job = await benchJob();
  const view = await job.view();
  const { id } = await job.takeBite(view);
  const { read } = job.kit.shop.core.shop();
  const row = () =>
    read.selectFrom('removal').selectAll().where('id', '=', id).executeTakeFirstOrThrow();
  const cuts = () =>
    read.selectFrom('removal_cut').selectAll().where('removal_id', '=', id).execute();
  const meant = await row();
  expect(meant.forecast_lbf).toBeCloseTo(
    view.step.kind === 'bite' ? view.step.forecast.weightLbf : 0,
    6,
  );
  const places = view.step.kind === 'bite' ? view.step.upper.cuts.length : 0;
  expect(await cuts()).toHaveLength(2 * places);
  expect((await cuts()).every(({ width_before_in }) => width_before_in !== null)).toBe(true);

  const { step } = await job.view();
  if (step.kind !== 'remeasure') throw new Error(step.kind);
  const { removalId, rowVersion } = step;
  const measure = (change: (widthIn: number, beforeIn: number) => number) => ({
    removalId,
    rowVersion,
    widths: step.places.map(({ limb, fromFadeIn, expectedIn, beforeIn }) => ({
      limb,
      fromFadeIn,
      widthIn: change(expectedIn, beforeIn),
    })),
    faces: [],
  });
  await expect(job.measure(measure((_, before) => before + 0.05))).rejects.toThrow(
    /wider than the 1\.1\d\d in before the cut\. Measure it again\./,
  );
  const short = measure((expected) => expected);
  await expect(job.measure({ ...short, widths: short.widths.slice(1) })).rejects.toThrow(
    /Measure the width 3 in from the fade of the upper limb too\./,
  );
  expect(await row()).toEqual(meant);

  await job.measure(measure((expected) => expected - 0.01));
  const after = await row();
  expect(after.modelled_drop ?? 0).toBeGreaterThan(1.1 * (meant.modelled_drop ?? 1));
  expect(after.drop_sd ?? 1).toBeLessThan(meant.drop_sd ?? 0);
  expect(after.remeasured_at).not.toBeNull();
  await expect(job.measure(measure((expected) => expected))).rejects.toThrow(/meantime/);
});

test('what was cut otherwise than the card says is reckoned as it was cut', async () => {
  const job = await benchJob();
  const view = await job.view();
  if (view.step.kind !== 'bite') throw new Error(view.step.kind);
  const planned = Math.max(...view.step.lower.cuts.map(({ offLeftIn }) => offLeftIn));
  await job.takeBite(view, { upper: 0, lower: 2 * planned });
  const { step, now } = await job.view();
  if (step.kind !== 'remeasure') throw new Error(step.kind);
  expect(step.places.every(({ limb }) => limb === 'lower')).toBe(true);
  const [first] = step.places;
  expect((first?.beforeIn ?? 0) - (first?.expectedIn ?? 0)).toBeCloseTo(4 * planned, 9);
  expect(now?.weighed).toBe(false);
  expect(now?.lbf ?? 0).toBeLessThan(52);
  await expect(
    benchJob().then(async (other) => other.takeBite(await other.view(), { upper: 0, lower: 0 })),
  ).rejects.toThrow('Nothing was taken off either limb');
});

test('a mistaken reading that is struck out has never been', async () => {
  const job = await benchJob();
  const before = await job.until('weigh');
  const { id, rowVersion } = await job.weigh((before.expected?.lbf ?? 0) + 0.9);
  const misled = await job.view();
  expect(misled.step.kind).toBe('bite');
  expect(misled.now?.lbf).not.toBeCloseTo(before.now?.lbf ?? 0, 2);
  const input = { commandId: newCommandId(), id, rowVersion, reason: 'read the wrong line' };
  await strikeOutReading(job.owner, input);
  const after = await job.view();
  expect(after.now).toEqual(before.now);
  expect(after.effectiveness).toEqual(before.effectiveness);
  expect(after.step).toEqual(before.step);
  expect(after.log.find((line) => line.id === id)).toMatchObject({
    struckReason: 'read the wrong line',
    canStrike: false,
  });
});

test('a bite that is struck out has never been, and its widths are those before it', async () => {
  const job = await benchJob();
  const before = await job.view();
  await job.until('weigh');
  const removal = (await job.view()).log.find(({ kind }) => kind === 'removal');
  await job.strikeOutRemoval(removal?.id ?? '', removal?.rowVersion ?? 0);
  const after = await job.view();
  expect(after.now).toEqual(before.now);
  const cuts = ({ step }: typeof after) => (step.kind === 'bite' ? step.upper.cuts : []);
  expect(cuts(after).map(({ widthNowIn }) => widthNowIn)).toEqual(
    cuts(before).map(({ widthNowIn }) => widthNowIn),
  );
});

test('a reading that does not fit asks in order, and nothing is cut before it is answered', async () => {
  const job = await benchJob();
  const before = await job.until('weigh');
  await job.weigh((before.expected?.lbf ?? 0) - 3);
  const view = await job.view();
  if (view.step.kind !== 'questions') throw new Error(view.step.kind);
  const { step } = view;
  expect(view.sentence).toMatch(/was expected: answer before anything is cut\.$/);
  expect(step.questions.map(({ about }) => about)).toEqual([
    'brace',
    'string',
    'rig zero',
    'temperature',
    'draw reference',
    'scale',
  ]);
  expect(view.missing.map(({ item }) => item)).toContain('surprise');
  const cut = await takeBite(job.owner, {
    commandId: newCommandId(),
    orderId: job.orderId,
    advice: view.advice,
    other: null,
    tool: '',
    note: '',
  });
  expect(cut.outcome).toBe('refused');

  const backwards = { ...step, questions: step.questions.toReversed() };
  await expect(job.answer(backwards)).rejects.toThrow('Is the brace height what it was?');
  await expect(job.answer({ ...step, questions: step.questions.slice(0, 5) })).rejects.toThrow(
    'Does the scale show the check weight right?',
  );

  expect(await job.answer(step)).toMatchObject({ outcome: 'stands' });
  const after = await job.view();
  expect(after.step.kind).not.toBe('questions');
  expect(after.now?.lbf ?? 0).toBeLessThan((before.now?.lbf ?? 0) - 1);
  await expect(job.answer(step)).rejects.toThrow('Nothing is asked about this weighing any more.');
});

test('an answer that explains the reading strikes it out, and the bow is weighed again', async () => {
  const job = await benchJob();
  const before = await job.until('weigh');
  const { id } = await job.weigh((before.expected?.lbf ?? 0) + 3);
  const { step } = await job.view();
  if (step.kind !== 'questions') throw new Error(step.kind);
  expect(await job.answer(step, 'string')).toMatchObject({ outcome: 'struck-out' });
  const after = await job.view();
  expect(after.step.kind).toBe('weigh');
  expect(after.now).toEqual(before.now);
  expect(after.log.find((line) => line.id === id)?.struckReason).toBe(
    'It was another string, or not seated in both grooves',
  );
});

test('two hands on one bow: the second is told, and nothing is written', async () => {
  const job = await benchJob();
  const [first, second] = [await job.view(), await job.view()];
  await job.takeBite(first);
  const log = (await job.view()).log;
  await expect(job.takeBite(second)).rejects.toMatchObject({
    code: 'STALE',
    message: expect.stringContaining('The records of this bow changed while the card was shown'),
  });
  expect((await job.view()).log).toEqual(log);
});

test('a failed glass check ends the cutting', async () => {
  const job = await benchJob();
  await job.until('glass-check');
  await job.checkGlass({ strands: true });
  const { step } = await job.view();
  expect(step).toEqual({
    kind: 'limit',
    why: ['The last glass check failed (lifted strands): take nothing more off.'],
  });
});

test('an owner who lets the tiller pass gets the bite that the figures give', async () => {
  const job = await benchJob();
  const view = await job.until('read-tiller');
  const input = { orderId: job.orderId, advice: view.advice, other: null, tool: '', note: '' };
  const refused = await takeBite(job.owner, { commandId: newCommandId(), ...input });
  expect(refused).toMatchObject({ outcome: 'refused', missing: [{ item: 'tiller-read' }] });
  const taken = await takeBite(job.owner, {
    commandId: newCommandId(),
    ...input,
    override: { reason: 'the rule is broken' },
  });
  expect(taken.outcome).toBe('recorded');
});

test('thinning counts what the loupe shows, and what it leaves of the glass', async () => {
  const job = await benchJob(3, { method: 'thinning' });
  const view = await job.view();
  if (view.step.kind !== 'bite') throw new Error(view.step.kind);
  expect(view.step).toMatchObject({ method: 'thin', step: 1 });
  const { id, rowVersion } = await job.takeBite(view);
  const offered = (await job.view()).step;
  if (offered.kind !== 'remeasure') throw new Error(offered.kind);
  expect(offered.places).toEqual([]);
  expect(offered.faces).toHaveLength(4);
  const meant = (await job.view()).now?.lbf ?? 0;
  const face = { limb: 'lower' as const, face: 'belly' as const };
  await job.measure({ removalId: id, rowVersion, widths: [], faces: [{ ...face, thou: 6 }] });
  expect((await job.view()).now?.lbf ?? 0).toBeLessThan(meant - 0.5);
  expect((await job.view()).step.kind).toBe('glass-check');
  const removal = (await job.view()).log.find(({ kind }) => kind === 'removal');
  expect(removal?.what).toContain('6 thou off the belly');
});

test('faces that nobody could measure count as they were meant', async () => {
  const job = await benchJob(3, { method: 'thinning' });
  const { id, rowVersion } = await job.takeBite(await job.view());
  const meant = await job.view();
  await job.measure({ removalId: id, rowVersion, widths: [], faces: [] });
  const after = await job.view();
  expect(after.step.kind).toBe('glass-check');
  expect(after.now).toEqual(meant.now);
  const { history } = await job.kit.flow.order();
  expect(history.some(({ summary }) => summary.startsWith('No face measured again'))).toBe(true);
});

test('without a plan, or with one that no longer fits, nothing is advised', async () => {
  const kit = await planShop();
  const view = () => getBench(kit.shop.owner, kit.orderId);
  expect(await view()).toMatchObject({
    step: { kind: 'not-at-bench' },
    now: { lbf: 52, sdLbf: null, weighed: true },
    planId: null,
    stopAtLbf: null,
  });
  const { write } = kit.shop.core.shop();
  const place = write.updateTable('shop_order').where('id', '=', kit.orderId);
  await place.set({ stage: 'weight-work' }).execute();
  expect((await view()).step).toEqual({ kind: 'no-plan' });
  await place.set({ stage: 'arrived' }).execute();
  await kit.accept();
  await place.set({ stage: 'weight-work' }).execute();
  expect((await view()).step.kind).toBe('bite');
  await place.set({ target_weight_lbf: 44 }).execute();
  expect(await view()).toMatchObject({
    step: {
      kind: 'plan-does-not-fit',
      why: ['The target changed from 45 lb @ 28" to 44 lb @ 28".'],
    },
    stopAtLbf: null,
    expected: null,
  });
});

test('an open stop finding is the only thing that is said', async () => {
  const job = await benchJob();
  await addFinding(job.owner, {
    commandId: newCommandId(),
    orderId: job.orderId,
    place: 'lower limb at the fade',
    grade: 'stop',
    note: 'opens when flexed',
  });
  const view = await job.view();
  expect(view.step.kind).toBe('stop-finding');
  expect(view.sentence).toBe('Do not string or draw this bow.');
  await expect(job.takeBite(view)).rejects.toThrow('refused');
});

test('where little is left and tiller stands off, the first cut is far out', async () => {
  const kit = await planShop();
  const { write } = kit.shop.core.shop();
  const order = write.updateTable('shop_order').where('id', '=', kit.orderId);
  await order.set({ target_weight_lbf: 49.5 }).execute();
  const sanding = {
    sanding: 'final sanding only' as const,
    allowanceMeanThou: 0.6,
    allowanceSdThou: 0.3,
  };
  await kit.accept({ wish: { targetLbf: 49.5, tillerTargetIn: 0, ...sanding } });
  await order.set({ stage: 'weight-work' }).execute();
  const { step } = await getBench(kit.shop.owner, kit.orderId);
  if (step.kind !== 'bite') throw new Error(JSON.stringify(step));
  const cut = step.lower.cuts.filter(({ offLeftIn }) => offLeftIn > 0);
  expect(step.upper.cuts.every(({ offLeftIn }) => offLeftIn === 0)).toBe(true);
  expect(Math.min(...cut.map(({ fromFadeIn }) => fromFadeIn))).toBeGreaterThan(0.35 * 26);
  expect(step.forecast.tillerIn).toBeLessThan(0.125);
  expect(52 - step.forecast.weightLbf).toBeLessThan(0.6);
});

test.each([2, 8])(
  'job %i: where the bench says that it is done, the gate to finish asks nothing of its weight',
  async (seed) => {
    const job = await benchJob(seed);
    const { step } = await job.finish();
    const { read, now } = job.kit.shop.core.shop();
    const { gateFacts } = await readBench(read, await readOrder(read, job.orderId), now());
    const asked = missingAt('finish', gateFacts).map(({ item }) => item);
    if (step.kind !== 'undershot') expect(step.kind).toBe('at-target');
    expect(asked.includes('undershoot-offer')).toBe(step.kind === 'undershot');
    expect(asked).not.toContain('weighed-after-sanding');
  },
);
