import { expect, test } from 'vitest';
import { addLimbSet } from '../../../core/shop/bows/limb-sets.ts';
import { addFinding } from '../../../core/shop/findings/findings.ts';
import { sendHome } from '../../../core/shop/orders/going-home.ts';
import { setLimbSet } from '../../../core/shop/orders/limb-set.ts';
import { editOrder } from '../../../core/shop/orders/orders.ts';
import { getPlan, strikeOutPlan } from '../../../core/shop/plans/plans.ts';
import { reckonPlan } from '../../../core/shop/plans/reckon.ts';
import { startBlank, startFromBow } from '../../../core/shop/plans/start.ts';
import { strikeOutReading } from '../../../core/shop/readings/readings.ts';
import { limbSetFields, orderFields } from '../../support/fixtures.ts';
import { bareStations, type PlanShop, planShop } from '../../support/plan-shop.ts';
import { newCommandId } from '../../support/test-shop.ts';

async function changeOrder(kit: PlanShop, change: Partial<typeof orderFields>) {
  const { rowVersion } = (await kit.flow.order()).card;
  await editOrder(kit.shop.owner, {
    commandId: newCommandId(),
    id: kit.orderId,
    rowVersion,
    ...orderFields,
    ...change,
  });
}

test('a plan starts from the records, with nothing missing', async () => {
  const kit = await planShop();
  const start = await kit.start();
  expect(start.gaps).toEqual([]);
  expect(start.notNow).toBeNull();
  expect(start.input.bow).toMatchObject({
    section: 'measured',
    surface: 'bare',
    coreGpa: 10.6,
    braceIn: 7.25,
    back: { glassNowIn: 0.045, glassMadeIn: 0.05 },
    upper: { fadeIn: 7, lengthIn: 26 },
  });
  expect(start.input.bow.upper.stations).toHaveLength(8);
  expect(start.input.wish).toMatchObject({
    weightLbf: 52,
    drawIn: 28,
    targetLbf: 45,
    tillerIn: 0.125,
    tillerTargetIn: 0.0625,
    sanding: 'full strip',
    effectivenessSd: 0.12,
  });
  // 1/16 in of draw alone is 0.18 lb; the check of the scale leaves 0.2 lb.
  expect(start.input.wish.weightSdLbf).toBeGreaterThan(0.2);
  expect(start.input.wish.weightSdLbf).toBeLessThan(0.4);
  expect(start.input.ownDrawIn).toBe(27.5);
  expect(start.reading?.text).toContain('52');
  expect(start.allowances['full strip']).toMatchObject({ mean: 1.4, sd: 0.6, jobs: 0 });
});

test('what nobody measured is a usual value, named as a gap, and the band is wider', async () => {
  const kit = await planShop(false);
  const { input, gaps } = await kit.start();
  expect(input.bow.section).toBe('unknown');
  expect(input.wish.effectivenessSd).toBe(0.25);
  expect(gaps.map(({ field, fix }) => [field, fix])).toEqual(
    expect.arrayContaining([
      ['bow.upper.stations', 'geometry'],
      ['bow.lower.stations', 'geometry'],
      ['bow.upper.fadeIn', 'bow'],
      ['bow.edgeRadiusIn', 'bow'],
    ]),
  );
  const answer = await reckonPlan(kit.shop.owner, { input, detail: 'sliding' });
  expect(answer).toMatchObject({ outcome: 'reckoned' });
});

test('measured over finish: a gap, and nothing is thinned', async () => {
  const kit = await planShop();
  await kit.measure(bareStations.map((one) => ({ ...one, surface: 'over-finish' })));
  const { input, gaps } = await kit.start();
  expect(input.bow.surface).toBe('over-finish');
  expect(input.bow.section).toBe('unknown');
  expect(gaps.map(({ field }) => field)).toContain('bow.surface');
});

test('a limb that was not measured takes the stations of the other', async () => {
  const kit = await planShop();
  await kit.measure(bareStations.filter(({ limb }) => limb === 'upper'));
  const { input, gaps } = await kit.start();
  expect(input.bow.lower.stations).toEqual(input.bow.upper.stations);
  expect(gaps.map(({ field }) => field)).toEqual(['bow.lower.stations']);
});

test('a core of no published stiffness, a tiller in words, no target: each said', async () => {
  const kit = await planShop();
  await kit.changeBow({ coreWood: 'moonwood' });
  await changeOrder(kit, { tillerTarget: 'as it came', targetWeightLbf: 45 });
  const { input, gaps } = await kit.start();
  expect(input.bow.coreGpa).toBe(11);
  expect(gaps.find(({ field }) => field === 'bow.coreGpa')?.sentence).toContain('moonwood');
  expect(gaps.find(({ field }) => field === 'wish.tillerTargetIn')?.fix).toBe('order');
  // Three under: both limbs alike.
  expect(input.wish.tillerTargetIn).toBe(0);
  expect(input.bow.section).toBe('measured');
});

test('a what-if needs no order, and none without any record', async () => {
  const kit = await planShop();
  const { owner } = kit.shop;
  const bow = await startFromBow(owner, { bowId: kit.bowId, limbSetId: null });
  expect(bow.input.wish.weightLbf).toBe(52);
  expect(bow.input.wish.targetLbf).toBe(47);
  expect(bow.about.orderId).toBeNull();
  const blank = await startBlank(owner);
  const answer = await reckonPlan(owner, { input: blank.input, detail: 'full' });
  expect(answer).toMatchObject({ outcome: 'reckoned', drop: { lbf: 5 } });
});

test('accepting freezes what the bench goes by, and the order is told', async () => {
  const kit = await planShop();
  const accepted = await kit.accept();
  expect(accepted.version).toBe(1);
  const [summary] = await kit.plans();
  expect(summary).toMatchObject({
    version: 1,
    method: 'narrowing',
    weightLbf: 52,
    targetLbf: 45,
    fits: { ok: true, why: [] },
  });
  const plan = await getPlan(kit.shop.owner, accepted.id);
  expect(plan.plan.stopAtLbf).toBe(summary?.stopAtLbf);
  expect(plan.plan.upper.offPerSideIn).toBeGreaterThan(0);
  expect(plan.response.upper.stations.length).toBeGreaterThan(4);
  expect(plan.forecastLbf).toBeCloseTo(45.5, 1);
  expect(plan.input.wish.targetLbf).toBe(45);
  const { history } = await kit.flow.order();
  expect(history[0]?.summary).toContain('Weight plan 1 accepted: Narrowing, 52 lb to 45 lb');
});

test('a screen that planned on the older order is told', async () => {
  const kit = await planShop();
  const { about } = await kit.start();
  await kit.accept();
  expect((await kit.start()).about.rowVersion).toBeGreaterThan(about.rowVersion ?? 0);
});

test('a repeat of the same acceptance makes no second plan', async () => {
  const kit = await planShop();
  const commandId = newCommandId();
  const first = await kit.accept({ commandId });
  expect(await kit.accept({ commandId })).toEqual(first);
  expect(await kit.plans()).toHaveLength(1);
});

test.each([
  ['sanding', {}, 'CONFLICT', /above the target/],
  ['narrowing', { targetLbf: 46 }, 'BAD_INPUT', /The order asks for 45 lb/],
  ['narrowing', { drawIn: 27 }, 'BAD_INPUT', /The order asks for 45 lb @ 28/],
  ['narrowing', { tillerTargetIn: 0.5 }, 'BAD_INPUT', /tiller of "0 to/],
  ['narrowing', { weightLbf: 51 }, 'BAD_INPUT', /begins from what was weighed/],
] as const)('%s with %o is refused', async (method, wish, code, message) => {
  const kit = await planShop();
  await expect(kit.accept({ method, wish })).rejects.toMatchObject({
    code,
    message: expect.stringMatching(message),
  });
  expect(await kit.plans()).toEqual([]);
});

test('a method that a limit refuses is not accepted, whoever asks', async () => {
  const kit = await planShop();
  const bare = { glassMadeIn: 0.05, glassNowIn: 0.032, glassHow: 'loupe' as const };
  const face = { facing: 'E-glass' as const, ...bare };
  await kit.changeBow({ faces: { back: face, belly: face } });
  await expect(kit.accept({ method: 'thinning' })).rejects.toMatchObject({
    code: 'CONFLICT',
    message: expect.stringMatching(/Thinning both faces is refused. Glass:/),
  });
});

test('a big drop needs its reason', async () => {
  const kit = await planShop();
  await changeOrder(kit, { targetWeightLbf: 43.5 });
  await expect(kit.accept()).rejects.toMatchObject({
    details: { confirmedBecause: expect.stringMatching(/reason/) },
  });
  await kit.accept({ because: 'agreed with the owner on the phone' });
  const [plan] = await kit.plans();
  expect(plan?.confirmedBecause).toBe('agreed with the owner on the phone');
});

test('no plan on a bow with an open stop finding, nor on one going home', async () => {
  const kit = await planShop();
  const { owner } = kit.shop;
  const found = {
    orderId: kit.orderId,
    grade: 'stop' as const,
    place: 'lower fade',
    note: 'a crack along the glue line',
  };
  await addFinding(owner, { commandId: newCommandId(), ...found });
  await expect(kit.accept()).rejects.toMatchObject({
    message: expect.stringContaining('stop finding is open (lower fade)'),
  });
  const { rowVersion } = (await kit.flow.order()).card;
  await sendHome(owner, {
    commandId: newCommandId(),
    id: kit.orderId,
    rowVersion,
    kind: 'refused',
    reason: 'cracked',
  });
  expect((await kit.start()).notNow).toContain('going home');
});

test('a plan that no longer fits says why, from what to what', async () => {
  const kit = await planShop();
  await kit.accept();
  const why = async () => (await kit.plans())[0]?.fits.why;

  await kit.measure(bareStations.map((one) => ({ ...one, widthIn: one.widthIn - 0.02 })));
  expect(await why()).toEqual([
    'The limbs were measured again: from measurement 1 to measurement 2.',
  ]);
  await changeOrder(kit, { targetWeightLbf: 46, tillerTarget: '1/4 positive' });
  await kit.changeBow({ edgeRadiusIn: 0.125 });
  const [reading] = (await kit.flow.order()).readings;
  await strikeOutReading(kit.shop.owner, {
    commandId: newCommandId(),
    id: reading?.id ?? '',
    rowVersion: reading?.rowVersion ?? 0,
    reason: 'scale not zeroed',
  });
  expect(await why()).toEqual([
    'The target changed from 45 lb @ 28" to 46 lb @ 28".',
    'The tiller wanted changed from 1/16 in to "1/4 positive".',
    'The limbs were measured again: from measurement 1 to measurement 2.',
    'The weighing of 52 lb @ 28", which it rests on, was struck out: scale not zeroed.',
    'Edge radius changed from 0.0625 in to 0.125 in.',
  ]);
});

test('a struck-out plan stays, with its reason, and is not struck out twice', async () => {
  const kit = await planShop();
  const { id, rowVersion } = await kit.accept();
  const strike = { id, rowVersion, reason: 'typed for the wrong bow' };
  await strikeOutPlan(kit.shop.owner, { commandId: newCommandId(), ...strike });
  const [plan] = await kit.plans();
  expect(plan?.struckReason).toBe('typed for the wrong bow');
  await expect(
    strikeOutPlan(kit.shop.owner, { commandId: newCommandId(), ...strike }),
  ).rejects.toMatchObject({ code: 'CONFLICT' });
  expect((await kit.accept()).version).toBe(2);
});

test('other limbs on the order outdate the plan', async () => {
  const kit = await planShop();
  await kit.changeBow({ takeDown: 'bolted three-piece' });
  await kit.accept();
  const added = { commandId: newCommandId(), bowId: kit.bowId, ...limbSetFields };
  const { id: limbSetId } = await addLimbSet(kit.shop.owner, added);
  const { rowVersion } = (await kit.flow.order()).card;
  await setLimbSet(kit.shop.owner, {
    commandId: newCommandId(),
    id: kit.orderId,
    rowVersion,
    limbSetId,
    cameAs: 'whole-bow',
  });
  const [plan] = await kit.plans();
  expect(plan?.fits).toEqual({
    ok: false,
    why: ['The limbs on the order changed from the bow\'s own to "long limbs".'],
  });
});
