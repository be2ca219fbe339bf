import { expect, test } from 'vitest';
import { filmAddsPercent, filmGpa, psiFromGpa } from '../../../core/limb/index.ts';

const gpa = (thicknessIn: number, modulus: number) => ({
  thicknessIn,
  modulusPsi: psiFromGpa(modulus),
});

const limb = {
  layers: [gpa(0.04, 38.6), gpa(0.3, 11), gpa(0.04, 38.6)],
  bellyWidthIn: 1.25,
  backWidthIn: 1.25,
  edgeRadiusIn: 0,
};

test('eight mil of film on both faces of a glass-faced limb add about one percent', () => {
  // By hand, in thirds of inches cubed and GPa: glass 2 x 38.6 x (0.19^3 - 0.15^3) / 3, core
  // 11 x 0.3^3 / 12, film 2 x 2.5 x (0.198^3 - 0.19^3) / 3.
  const bare = (2 * 38.6 * (0.19 ** 3 - 0.15 ** 3)) / 3 + (11 * 0.3 ** 3) / 12;
  const film = (2 * filmGpa * (0.198 ** 3 - 0.19 ** 3)) / 3;
  const percent = filmAddsPercent(limb, gpa(0.008, filmGpa));
  expect(percent).toBeCloseTo((film / bare) * 100, 9);
  expect(percent).toBeGreaterThan(0.8);
  expect(percent).toBeLessThan(1.6);
});

test('a film of no thickness is refused', () => {
  expect(() => filmAddsPercent(limb, gpa(0, filmGpa))).toThrow('thicker than 0');
});
