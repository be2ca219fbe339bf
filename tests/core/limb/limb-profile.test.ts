import { describe, expect, test } from 'vitest';
import { type LimbProfile, limbCurve, sizesOf } from '../../../core/limb/limb-profile.ts';
import { march } from '../../../core/limb/march.ts';
import { meshOf } from '../../../core/limb/mesh.ts';
import { sectionStiffness } from '../../../core/limb/section.ts';
import { bambooPsi, glassPsi, taperedLimb } from '../../support/sample-limbs.ts';

test('at its stations the limb is as stiff as its section there', () => {
  const profile = taperedLimb();
  const curve = limbCurve(profile);
  for (const { fromFadeIn, bellyWidthIn, backWidthIn, thicknessIn } of profile.stations) {
    const { eiLbfIn2 } = sectionStiffness({
      layers: [
        { thicknessIn: 0.04, modulusPsi: glassPsi },
        { thicknessIn: thicknessIn - 0.08, modulusPsi: bambooPsi },
        { thicknessIn: 0.04, modulusPsi: glassPsi },
      ],
      bellyWidthIn,
      backWidthIn,
      edgeRadiusIn: 0.0625,
    });
    expect(curve.eiAt(fromFadeIn) / eiLbfIn2).toBeCloseTo(1, 12);
  }
});

test('an all-wood limb is one layer of wood', () => {
  const curve = limbCurve(taperedLimb({ glassIn: 0, edgeRadiusIn: 0 }));
  // E b h^3 / 12 at the fade.
  expect(curve.eiAt(0) / ((bambooPsi * 1.25 * 0.44 ** 3) / 12)).toBeCloseTo(1, 12);
});

test('a straight taper is read off straight between the stations, and kept past the last', () => {
  const { stations, ...rest } = taperedLimb();
  const profile = { ...rest, stations: stations.slice(1, -1) };
  const sizes = sizesOf(profile);
  expect(sizes(6).backWidthIn).toBeCloseTo(1.25 - (0.75 * 6) / 26, 12);
  expect(sizes(0).backWidthIn).toBe(sizes(4).backWidthIn);
  expect(sizes(26).thicknessIn).toBe(sizes(24).thicknessIn);
});

test.each([
  [{ reflexIn: 1, recurveIn: 0, recurveFromIn: 0 }, 1],
  [{ reflexIn: -1, recurveIn: 0, recurveFromIn: 0 }, -1],
  [{ reflexIn: 0, recurveIn: 1.5, recurveFromIn: 18 }, 1.5],
])('unstrung as %j, its tip lies %d in away from the archer', (unstrung, away) => {
  const profile = taperedLimb({ unstrung });
  const limb = limbCurve(profile);
  const bow = { fadeIn: 0, fadeOffsetIn: 0, padAngleRad: 0, limb };
  const slack = { tensionLbf: 0, angleRad: -1.5, nockIn: 0 };
  const { yIn } = march(bow, meshOf(limb, 60), slack);
  // The formula is for small angles; a hook turns by more of them.
  expect(Math.abs(yIn / -away - 1)).toBeLessThan(0.03);
});

describe('a limb that cannot be is refused in one sentence', () => {
  const profile = taperedLimb();
  const stations = (change: Partial<LimbProfile['stations'][number]>) => ({
    ...profile,
    stations: profile.stations.map((station, i) => (i === 2 ? { ...station, ...change } : station)),
  });
  test.each([
    ['out of order', stations({ fromFadeIn: 3 }), /out of order: 3 in from the fade follows 4 in/],
    ['past the tip', stations({ fromFadeIn: 40 }), /outside the limb of 26 in/],
    ['no width', stations({ backWidthIn: 0 }), /width 8 in from the fade must be more than 0/],
    ['no core', stations({ thicknessIn: 0.08 }), /no thicker than its glass/],
    ['too few', { ...profile, stations: profile.stations.slice(0, 2) }, /at least three/],
    ['no length', { ...profile, lengthIn: 0 }, /longer than 0/],
    ['no modulus', { ...profile, layup: { ...profile.layup, corePsi: 0 } }, /modulus over 0/],
    ['negative edge', { ...profile, edgeRadiusIn: -0.1 }, /cannot be negative/],
    [
      'hook past the tip',
      { ...profile, unstrung: { reflexIn: 0, recurveIn: 1, recurveFromIn: 26 } },
      /before the tip/,
    ],
  ] as const)('%s', (_, odd, sentence) => {
    expect(() => limbCurve(odd)).toThrow(sentence);
  });
});
