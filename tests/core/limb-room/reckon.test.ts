import { expect, test } from 'vitest';
import { freeze } from '../../../core/limb-room/freeze.ts';
import { reckon } from '../../../core/limb-room/reckon.ts';
import { usualBenchPolicy } from '../../../shared/bench-policy.ts';
import { type Reckoned, reckoning } from '../../../shared/plan-answer.ts';
import type { PlanInput } from '../../../shared/plan-input.ts';
import { planResponse } from '../../../shared/plan-record.ts';
import { changedInput, longbowInput } from '../../support/plan-input.ts';

const rules = { limits: usualBenchPolicy.limits, stripThou: 1.4 };

function reckoned(input: PlanInput, detail: 'full' | 'sliding' = 'full'): Reckoned {
  const answer = reckoning.parse(reckon({ input, detail }, rules));
  if (answer.outcome !== 'reckoned') throw new Error(answer.sentence);
  return answer;
}

function planOf(answer: Reckoned, method: string) {
  const found = answer.methods.find((one) => one.method === method);
  if (found?.outcome !== 'planned') throw new Error(`${method}: no plan`);
  return found.plan;
}

test('sanding comes first, narrowing is recommended and reaches target and reserve', () => {
  const answer = reckoned(longbowInput);
  expect(answer.methods.map(({ method }) => method)).toEqual([
    'sanding',
    'narrowing',
    'thinning',
    'mixed',
  ]);
  expect(answer.recommended).toBe('narrowing');
  const plan = planOf(answer, 'narrowing');
  expect(plan.afterFinishing.weightLbf).toBeCloseTo(45.5, 1);
  expect(plan.stopAtLbf).toBeCloseTo(45.5 + plan.finishingTakesLbf, 9);
  expect(plan.upper.offTotalIn).toBe(2 * plan.upper.offPerSideIn);
  expect(plan.upper.offPerSideIn).toBeGreaterThan(plan.lower.offPerSideIn);
});

test('the outline shows what comes off, and nothing past the ends of the cut', () => {
  const { upper } = planOf(reckoned(longbowInput), 'narrowing');
  const at = (place: number) => upper.outline.find(({ fromFadeIn }) => fromFadeIn === place);
  const off = (place: number) =>
    (at(place)?.presentWidthIn.back ?? 0) - (at(place)?.newWidthIn.back ?? 0);
  expect(off(0)).toBe(0);
  expect(off(8)).toBeCloseTo(upper.offTotalIn, 9);
  expect(Math.abs(off(6) - upper.offTotalIn)).toBeLessThan(1 / 500);
  expect(upper.outline.at(-1)?.fromFadeIn).toBe(26);
  expect(off(26)).toBeCloseTo(0, 9);
});

test('a hinge of the usual cut is avoided by ending the full cut elsewhere', () => {
  const answer = reckoned(longbowInput);
  expect(planOf(answer, 'narrowing').strain.hinges.length).toBeGreaterThan(0);
  const other = answer.withoutHinge;
  expect(other?.plan.strain.hinges).toEqual([]);
  expect(other?.plan.refusals).toEqual([]);
  expect(other?.sentence).toMatch(/ending at \d+ % of the limb instead of 50 %/);
  const { cutShape } = other ?? longbowInput.choices;
  const taken = reckoned(changedInput({ choices: { cutShape } }));
  expect(planOf(taken, 'narrowing').strain.hinges).toEqual([]);
  expect(taken.withoutHinge).toBeNull();
});

test('strain is told along both limbs, before and after', () => {
  const { strain } = planOf(reckoned(longbowInput), 'narrowing');
  expect(new Set(strain.along.map(({ limb }) => limb))).toEqual(new Set(['upper', 'lower']));
  expect(Math.max(...strain.along.map(({ before }) => before))).toBe(strain.peakBefore);
  expect(Math.max(...strain.along.map(({ after }) => after))).toBe(strain.peakAfter);
  for (const { limb, fromFadeIn, risePart } of strain.hinges) {
    const at = strain.along.find((one) => one.limb === limb && one.fromFadeIn === fromFadeIn);
    expect((at?.after ?? 0) / (at?.before ?? 1) - 1).toBeCloseTo(risePart, 9);
  }
});

test('the modelled curve meets the present weight, and ends on the forecast when all is done', () => {
  const { forceDraw } = reckoned(longbowInput);
  expect(forceDraw?.basis).toBe('model');
  expect(forceDraw?.slopeFrom).toBe('model');
  expect(forceDraw?.modelled[0]).toEqual({ drawIn: 8.75, forceLbf: 0 });
  expect(forceDraw?.modelled.at(-1)?.forceLbf).toBeCloseTo(52, 9);
  expect(forceDraw?.after.at(-1)?.forceLbf).toBeCloseTo(45.5, 1);
  expect(forceDraw?.own?.note).toContain('modelled');
  expect(forceDraw?.storedFtLbf).toBeNull();
});

test('readings at four draws set the slope and the stored energy', () => {
  const readings = [
    { drawIn: 16, forceLbf: 20.5 },
    { drawIn: 20, forceLbf: 30 },
    { drawIn: 24, forceLbf: 40 },
    { drawIn: 28, forceLbf: 52 },
  ];
  const { forceDraw } = reckoned(changedInput({ readings }));
  expect(forceDraw?.slopeFrom).toBe('readings');
  expect(forceDraw?.slopeLbfPerIn).toBeGreaterThan(2.4);
  expect(forceDraw?.slopeLbfPerIn).toBeLessThan(3.8);
  expect(forceDraw?.measured).toEqual(readings);
  expect(forceDraw?.storedFtLbf).toBeGreaterThan(30);
});

test('few readings near full draw: the bow when all is done stays under the bow as it is', () => {
  const readings = [
    { drawIn: 26, forceLbf: 44.4 },
    { drawIn: 27, forceLbf: 48 },
    { drawIn: 28, forceLbf: 52 },
  ];
  const { forceDraw } = reckoned(changedInput({ readings }));
  const { curve = [], after = [] } = forceDraw ?? {};
  expect(after.at(-1)?.forceLbf).toBeCloseTo(45.5, 1);
  const between = after.filter(({ drawIn }) => drawIn > 10 && drawIn <= 28);
  expect(between.length).toBeGreaterThan(10);
  for (const { drawIn, forceLbf } of between) {
    const to = curve.findIndex((one) => one.drawIn >= drawIn - 1e-9);
    const [low, high] = [curve[to - 1], curve[to]];
    if (low === undefined || high === undefined) throw new Error(`no curve at ${drawIn} in`);
    const part = (drawIn - low.drawIn) / (high.drawIn - low.drawIn);
    expect(forceLbf).toBeLessThan(low.forceLbf + part * (high.forceLbf - low.forceLbf));
  }
});

test('a small reduction leaves no room for a full strip, said before any weight work', () => {
  const small = reckoned(changedInput({ wish: { targetLbf: 50.5, tillerIn: 1 / 16 } }));
  expect(small.sanding?.fits).toBe('final sanding only');
  expect(small.warnings).toContain(small.sanding?.sentence);
  expect(reckoned(longbowInput).sanding?.fits).toBe('full strip');
});

test('where nothing reaches the target, the lowest weight and why', () => {
  const limits = { ...usualBenchPolicy.limits, leastGlassIn: 0.0395 };
  const input = changedInput({ bow: { maxSafeDrawIn: null } });
  const answer = reckon({ input, detail: 'full' }, { limits, stripThou: 1.4 });
  if (answer.outcome !== 'reckoned') throw new Error(answer.sentence);
  expect(answer.recommended).toBeNull();
  expect(answer.lowest?.why.join(' ')).toContain('Glass');
  expect(answer.warnings.join(' ')).toContain('Nobody knows how far this bow may be drawn');
});

test('measured over old finish, nothing is thinned', () => {
  const answer = reckoned(changedInput({ bow: { surface: 'over-finish' } }));
  expect(planOf(answer, 'thinning').refusals.map(({ limit }) => limit)).toContain('film');
  expect(planOf(answer, 'narrowing').refusals).toEqual([]);
});

test('trapping narrows the back alone', () => {
  const { upper } = planOf(reckoned(changedInput({ choices: { face: 'back' } })), 'narrowing');
  const station = upper.stations.find(({ fromFadeIn }) => fromFadeIn === 8);
  expect(station?.newWidthIn.belly).toBe(station?.presentWidthIn.belly);
  expect(station?.newWidthIn.back).toBeLessThan(station?.presentWidthIn.back ?? 0);
  expect(upper.removal.face).toBe('back');
});

test('sliding answers the same weights without what is drawn', () => {
  const [full, quick] = [reckoned(longbowInput), reckoned(longbowInput, 'sliding')];
  expect(quick.methods.map(({ method }) => planOf(quick, method).afterFinishing)).toEqual(
    full.methods.map(({ method }) => planOf(full, method).afterFinishing),
  );
  expect(quick.forceDraw).toBeNull();
  expect(planOf(quick, 'narrowing').upper.outline).toEqual([]);
});

test('what the bench goes by: slopes of the bow at the places of the work', () => {
  const frozen = freeze(longbowInput, 'narrowing', rules);
  expect(planResponse.parse(frozen.response)).toEqual(frozen.response);
  const places = frozen.response.upper.stations.map(({ fromFadeIn }) => fromFadeIn);
  expect(places).toEqual(expect.arrayContaining([2, 3, 13, 26]));
  expect(frozen.dropPerThou).toBeGreaterThan(0.02);
  expect(frozen.dropPerThou).toBeLessThan(0.028);
  expect(frozen.slopeLbfPerIn).toBeGreaterThan(2);
  expect(frozen.braceLbfPerIn).toBeGreaterThan(0);
  const strip = 52 * (1 - Math.exp(-1.4 * frozen.dropPerThou));
  expect(reckoned(longbowInput).sanding?.leftLbf).toBeCloseTo(52 - strip - 45, 6);
});
