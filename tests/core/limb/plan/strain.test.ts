import { expect, test } from 'vitest';
import { modelledWeight } from '../../../../core/limb/modelled-bow.ts';
import { defaultDensities, tipWeightedMassLb } from '../../../../core/limb/plan/mass.ts';
import { type ModelState, modelState } from '../../../../core/limb/plan/model.ts';
import { hingesOf, limbStrain } from '../../../../core/limb/plan/strain.ts';
import { bowAfter } from '../../../../core/limb/predict-removal.ts';
import { nothingTaken } from '../../../../core/limb/removal.ts';
import { longbow, taperedLimb } from '../../../support/sample-limbs.ts';

function stateOf(...args: Parameters<typeof modelState>): ModelState {
  const solved = modelState(...args);
  if (solved.status !== 'converged') throw new Error(solved.why);
  return solved.value;
}

test('a bow solved from one near by is the bow solved from rest', () => {
  const bow = longbow();
  const options = { drawIn: 28, segments: 60 };
  const removal = { ...nothingTaken, bellyThou: 2, backThou: 2 };
  const after = bowAfter(bow, { upper: removal, lower: nothingTaken });
  const [near, rest] = [stateOf(after, options, stateOf(bow, options)), stateOf(after, options)];
  expect(near.weightLbf).toBeCloseTo(rest.weightLbf, 7);
  expect(near.tillerIn).toBeCloseTo(rest.tillerIn, 7);
  expect(near.tillerIn).toBeGreaterThan(0.05);
  const modelled = modelledWeight(after, 28);
  expect(modelled.status === 'converged' && modelled.value).toBeCloseTo(near.weightLbf, 7);
});

test('strain at the fade is half the thickness times moment over stiffness', () => {
  // One material, so the neutral axis lies in the middle; square edges, so EI = E w t^3 / 12.
  const bow = longbow({ glassIn: 0, edgeRadiusIn: 0 });
  const { bow: whole, meshes, drawn } = stateOf(bow, { drawIn: 28, segments: 60 });
  const { profile } = bow.upper;
  const half = { half: whole.upper, mesh: meshes.upper, state: drawn.upper, leanRad: 0 };
  const [fade] = limbStrain('upper', profile, half, [0]);
  const { tensionLbf, angleRad, nockIn } = drawn.upper.pull;
  const lever = (nockIn + 0.5) * Math.cos(angleRad) - 7 * Math.sin(angleRad);
  const stiffness = (profile.layup.corePsi * 1.25 * 0.44 ** 3) / 12;
  expect(fade?.strain).toBeCloseTo((0.22 * tensionLbf * lever) / stiffness, 9);
  // Glass and bamboo bows work at about a percent; a tenth of that or ten times it is a mistake.
  expect(fade?.strain).toBeGreaterThan(0.003);
  expect(fade?.strain).toBeLessThan(0.02);
});

test('a hinge is a rise by over a twentieth where the limb works', () => {
  const at = (fromFadeIn: number, strain: number) => ({
    limb: 'upper' as const,
    fromFadeIn,
    strain,
  });
  const before = [at(0, 0.008), at(8, 0.008), at(16, 0.006), at(24, 0.001), at(26, 0)];
  const after = [at(0, 0.0079), at(8, 0.0083), at(16, 0.0066), at(24, 0.0015), at(26, 0)];
  const hinges = hingesOf(before, after);
  expect(hinges.map(({ fromFadeIn }) => fromFadeIn)).toEqual([16]);
  expect(hinges[0]?.risePart).toBeCloseTo(0.1, 9);
});

test('mass of a bar, as if at its tip, is a third of it', () => {
  const profile = taperedLimb({
    fadeWidthIn: 1,
    tipWidthIn: 1,
    fadeThicknessIn: 0.4,
    tipThicknessIn: 0.4,
  });
  const { glassLbPerIn3, coreLbPerIn3 } = defaultDensities;
  const whole = 26 * (0.08 * glassLbPerIn3 + 0.32 * coreLbPerIn3);
  expect(tipWeightedMassLb(profile, defaultDensities) / whole).toBeCloseTo(1 / 3, 3);
});
