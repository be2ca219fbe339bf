import { describe, expect, test } from 'vitest';
import type { BowKind, PlanBow, PlanWish } from '../../../../core/limb/plan/bow.ts';
import { defaultLimits, type PlanLimits } from '../../../../core/limb/plan/limits.ts';
import { planReduction } from '../../../../core/limb/plan/plan.ts';
import type { LimitName } from '../../../../core/limb/plan/refusals.ts';
import type { PlanOptions, ReductionPlan } from '../../../../core/limb/plan/types.ts';
import { ShopError } from '../../../../shared/errors.ts';
import type { PlanMethod } from '../../../../shared/weight-plan.ts';
import { plainBow, plainWish } from '../../../support/random-plan.ts';
import { type LimbWishes, longbow } from '../../../support/sample-limbs.ts';

function planOf(bow: PlanBow, wish: PlanWish, options?: Partial<PlanOptions>): ReductionPlan {
  const solved = planReduction(bow, wish, options);
  if (solved.status !== 'converged') throw new Error(solved.why);
  return solved.value;
}

function refusalsOf(plan: ReductionPlan, method: PlanMethod) {
  const outcome = plan.methods.find((one) => one.method === method);
  if (outcome?.plan.status !== 'converged') throw new Error(`${method}: no plan`);
  return outcome.plan.value.refusals;
}

const sentenceOf = (plan: ReductionPlan, method: PlanMethod, limit: LimitName) =>
  refusalsOf(plan, method).find((one) => one.limit === limit)?.sentence;

const withLimits = (change: Partial<PlanLimits>) => ({ limits: { ...defaultLimits, ...change } });
const sized = (wishes: LimbWishes, change: Partial<PlanBow> = {}) =>
  plainBow({ measured: longbow(wishes), ...change });
const even = { ...plainWish, tillerIn: 0, tillerTargetIn: 0 };

describe('each limit is named with its figure', () => {
  test('glass under 0.030 in, sanding included', () => {
    const bow = sized({ glassIn: 0.034 }, { made: null });
    const plan = planOf(bow, { ...even, targetLbf: 44 });
    expect(sentenceOf(plan, 'thinning', 'glass')).toMatch(
      /^Glass: 0\.02\d+ in would be left on the belly of the upper limb, under 0\.03 in/,
    );
    expect(sentenceOf(plan, 'narrowing', 'glass')).toBeUndefined();
    const thin = planOf(sized({ glassIn: 0.031 }, { made: null }), { ...even, targetLbf: 50 });
    expect(sentenceOf(thin, 'sanding', 'glass')).toMatch(
      /^Glass: 0\.029 in would be left on the .*, under 0\.03 in, the least glass/,
    );
  });

  test('glass under three quarters of what it was when made', () => {
    const made = { bellyGlassIn: 0.06, backGlassIn: 0.04 };
    const plan = planOf(sized({ glassIn: 0.046 }, { made }), { ...even, targetLbf: 47 });
    expect(sentenceOf(plan, 'thinning', 'glass')).toMatch(
      /on the belly of the .* limb, under 0\.045 in, 75 % of the 0\.06 in it had when made\.$/,
    );
  });

  test.each([
    ['carbon', /^Facing: no thinning, because the belly is faced with carbon\.$/],
    ['clear over veneer', /the belly is faced with clear over veneer/],
    ['unknown', /nobody knows the facing of the belly/],
  ] as const)('no thinning on a facing of %s', (bellyFacing, sentence) => {
    const plan = planOf(plainBow({ bellyFacing }), even);
    expect(sentenceOf(plan, 'thinning', 'facing')).toMatch(sentence);
    expect(sentenceOf(plan, 'mixed', 'facing')).toMatch(sentence);
    expect(refusalsOf(plan, 'narrowing')).toEqual([]);
    expect(plan.recommended).toBe('narrowing');
  });

  test.each([
    ['longbow', '3/8', 0.385],
    ['hybrid', '7/16', 0.45],
    ['recurve', '1/2', 0.51],
  ] as const)('width of a %s at its cut stations', (kind: BowKind, figure, tipWidthIn) => {
    const bow = sized({ tipWidthIn, fadeWidthIn: tipWidthIn + 0.04 }, { kind });
    const plan = planOf(bow, { ...even, targetLbf: 46 });
    expect(sentenceOf(plan, 'narrowing', 'width')).toContain(`under the ${figure} in of a ${kind}`);
    expect(refusalsOf(plan, 'thinning')).toEqual([]);
  });

  test('a tip that is narrow already is no fault where nothing is cut', () => {
    const cutShape = { fromIn: 2, fullFromIn: 3, carriedPart: 0.3, endsShortIn: 8 };
    const bow = sized({ tipWidthIn: 0.3, fadeWidthIn: 1.3 });
    const plan = planOf(bow, { ...even, targetLbf: 47 }, { cutShape });
    expect(sentenceOf(plan, 'narrowing', 'width')).toBeUndefined();
  });

  test.each([
    ['longbow', '1.5'],
    ['hybrid', '2'],
    ['recurve', '3'],
  ] as const)('width to thickness of a %s', (kind: BowKind, figure) => {
    const bow = sized({ fadeWidthIn: 0.6, tipWidthIn: 0.6 }, { kind });
    const cutShape = { fromIn: 2, fullFromIn: 3, carriedPart: 0.9, endsShortIn: 0 };
    const thick = planOf(bow, { ...even, targetLbf: 43 }, { cutShape });
    expect(sentenceOf(thick, 'narrowing', 'width-to-thickness')).toContain(
      `under the ${figure} of a ${kind}`,
    );
  });

  test('side stiffness left', () => {
    const plan = planOf(plainBow(), { ...even, targetLbf: 41 });
    expect(sentenceOf(plan, 'narrowing', 'side-stiffness')).toMatch(
      /^Side stiffness: 4\d % would be left 16 in from the fade of the .* limb, under the 50 %/,
    );
    expect(plan.recommended).toBe('thinning');
  });

  test('a steep recurve is not narrowed, a gentle one is', () => {
    const plan = (recurveIn: number) =>
      planOf(
        sized(
          {
            unstrung: { reflexIn: 0, recurveIn, recurveFromIn: 18 },
            fadeWidthIn: 1.8,
            tipWidthIn: 1,
          },
          { kind: 'recurve' },
        ),
        { ...even, targetLbf: 48 },
      );
    expect(sentenceOf(plan(2.9), 'narrowing', 'steep-recurve')).toBe(
      'Steep recurve: no narrowing, because the hook turns through 62 degrees, over 60.',
    );
    expect(sentenceOf(plan(2), 'narrowing', 'steep-recurve')).toBeUndefined();
  });

  test('more than there is', () => {
    const plan = planOf(sized({ glassIn: 0.005 }, { made: null }), { ...even, targetLbf: 40 });
    expect(sentenceOf(plan, 'thinning', 'material')).toMatch(/^Material:/);
  });
});

describe('the total drop', () => {
  test.each([
    [47, 'small', null],
    [46.8, 'note', /10 % on/],
    [44.2, 'confirm', /confirm it/],
    [39, 'confirm', /13 lb or 25 %/],
    [38.9, 'refused', /13\.1 lb or 25\.2 % is over the 25 %/],
  ] as const)('52 lb to %s lb: %s', (targetLbf, level, sentence) => {
    const { drop } = planOf(plainBow(), { ...even, targetLbf });
    expect(drop.level).toBe(level);
    if (sentence === null) expect(drop.sentence).toBeNull();
    else expect(drop.sentence).toMatch(sentence);
  });

  test('8 lb is to be confirmed on a strong bow too', () => {
    const { drop } = planOf(plainBow(), { ...even, weightLbf: 70, targetLbf: 62 });
    expect(drop.level).toBe('confirm');
  });

  test('past the limit every method is refused, and a shop may set the limit', () => {
    const wish = { ...even, targetLbf: 38.5 };
    const plan = planOf(plainBow(), wish);
    for (const { method } of plan.methods) {
      expect(sentenceOf(plan, method, 'total-drop')).toMatch(/^Total drop:/);
    }
    expect(plan.recommended).toBeNull();
    expect(plan.lowest?.weightLbf).toBeGreaterThanOrEqual(39);
    const allowed = planOf(plainBow(), wish, withLimits({ refuseDropPart: 0.3 }));
    expect(sentenceOf(allowed, 'thinning', 'total-drop')).toBeUndefined();
  });
});

describe('where nothing reaches the target', () => {
  const bow = plainBow({ bellyFacing: 'carbon', backFacing: 'carbon' });
  const wish = { ...plainWish, targetLbf: 40 };
  const lowest = planOf(bow, wish).lowest;

  test('the lowest weight is named, with the way there and why not lower', () => {
    expect(lowest?.method).toBe('narrowing');
    expect(lowest?.why.join()).toMatch(/Sanding alone ends at.*Side stiffness.*Facing/);
    expect(lowest?.weightLbf).toBeGreaterThan(40.5);
  });

  test('it can be planned to, and a little lower cannot', () => {
    const at = (weightLbf: number) =>
      planOf(bow, { ...wish, targetLbf: weightLbf - wish.reserveLbf }).recommended;
    expect(at((lowest?.weightLbf ?? 0) + 0.02)).toBe('narrowing');
    expect(at((lowest?.weightLbf ?? 0) - 0.1)).toBeNull();
  });

  test('glass that not even sanding allows leaves the bow as it is', () => {
    const thin = sized({ glassIn: 0.03 }, { made: null });
    const plan = planOf(thin, { ...even, targetLbf: 48 });
    expect(plan.recommended).toBeNull();
    expect(plan.lowest).toMatchObject({ method: null, weightLbf: 52 });
    expect(plan.lowest?.why.join()).toMatch(/Glass/);
  });
});

describe('bad input is one sentence', () => {
  const wood = plainBow({
    measured: longbow({ glassIn: 0 }),
    construction: 'all-wood',
    bellyFacing: 'wood',
    backFacing: 'wood',
    made: null,
  });
  const station = (change: object) => {
    const measured = longbow();
    const { profile } = measured.upper;
    const stations = profile.stations.map((one, i) => (i === 2 ? { ...one, ...change } : one));
    return plainBow({
      measured: { ...measured, upper: { ...measured.upper, profile: { ...profile, stations } } },
    });
  };
  type Case = [string, PlanBow, Partial<PlanWish>, Partial<PlanOptions>, RegExp];
  const cases: Case[] = [
    ['target above', plainBow(), { targetLbf: 53 }, {}, /target of 53 lb is above the present 52/],
    ['no target', plainBow(), { targetLbf: 0 }, {}, /target must be more than 0/],
    ['no weight', plainBow(), { weightLbf: Number.NaN }, {}, /present weight must be more than 0/],
    ['spread', plainBow(), { weightSdLbf: -1 }, {}, /spread of the weight/],
    ['past the safe draw', plainBow({ maxSafeDrawIn: 27 }), {}, {}, /maximum safe draw of 27 in/],
    ['before brace', plainBow(), { drawIn: 8 }, {}, /past the brace height, 8\.75 in AMO/],
    ['tiller', plainBow(), { tillerIn: Number.NaN }, {}, /tiller now and the tiller wanted/],
    ['reserve', plainBow(), { reserveLbf: -0.5 }, {}, /reserve cannot be negative/],
    ['finishing', plainBow(), { finishing: { meanThou: -1, sdThou: 0 } }, {}, /cannot be negative/],
    ['unsure of 0', plainBow(), { finishing: { meanThou: 0, sdThou: 1 } }, {}, /before saying/],
    ['effect', plainBow(), { effectiveness: { mean: 0, sd: 0 } }, {}, /effectiveness must be/],
    ['width of nothing', station({ backWidthIn: 0 }), {}, {}, /width 8 in from the fade/],
    ['thickness of nothing', station({ thicknessIn: -1 }), {}, {}, /no thicker than its glass/],
    ['stations out of order', station({ fromFadeIn: 2 }), {}, {}, /out of order: 2 in.*4 in/],
    ['glass when made', plainBow({ made: { bellyGlassIn: -1, backGlassIn: 0 } }), {}, {}, /Glass/],
    ['no glass', sized({ glassIn: 0 }), {}, {}, /how thick the glass/],
    ['glass on wood', plainBow({ construction: 'all-wood' }), {}, {}, /all-wood bow has no glass/],
    ['back of wood', wood, {}, { methods: ['thinning'] }, /back of an all-wood bow is never/],
    ['back in a mix', wood, {}, { methods: ['sanding', 'mixed'] }, /never thinned: scrape/],
    ['scraping glass', plainBow(), {}, { methods: ['belly-scrape'] }, /Only the belly of an all/],
    [
      'thinning carbon',
      plainBow({ backFacing: 'carbon' }),
      {},
      { methods: ['thinning'] },
      /not thinned, because the back is faced with carbon/,
    ],
    [
      'thinning what nobody knows',
      plainBow({ backFacing: 'unknown' }),
      {},
      { methods: ['thinning'] },
      /nobody knows the facing of the back/,
    ],
    ['no method', plainBow(), {}, { methods: [] }, /at least one way/],
    ['limit', plainBow(), {}, withLimits({ leastGlassIn: -1 }), /limit "leastGlassIn"/],
    [
      'cut shape',
      plainBow(),
      {},
      { cutShape: { fromIn: 4, fullFromIn: 3, carriedPart: 0.5, endsShortIn: 0 } },
      /begin, be full, and taper out/,
    ],
  ];

  test.each(cases)('%s', (_, bow, wish, options, sentence) => {
    const call = () => planReduction(bow, { ...plainWish, ...wish }, options);
    expect(call).toThrow(ShopError);
    expect(call).toThrow(sentence);
    expect(call).toThrow(/^[^.]+(\.\d[^.]*)*\.$/);
  });

  test('thinning beside other ways on carbon is shown as refused', () => {
    const plan = planOf(plainBow({ backFacing: 'carbon' }), plainWish, {
      methods: ['thinning', 'sanding'],
    });
    expect(plan.methods.map(({ method }) => method)).toEqual(['sanding', 'thinning']);
    expect(sentenceOf(plan, 'thinning', 'facing')).toBeDefined();
  });
});
