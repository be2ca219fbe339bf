import { describe, expect, test } from 'vitest';
import { hardenerOffPercent, mixFor } from '../../core/finish/mix.ts';
import { type MixRecipe, recipeBy } from '../../core/finish/mix-recipe.ts';

const byVolume = (resinParts: number, hardenerParts: number): MixRecipe => ({
  by: 'volume',
  resinParts,
  hardenerParts,
  thinnerPercent: 0,
  density: { resin: 1.15, hardener: 0.97, thinner: null },
});

describe('ratios by volume, resin first', () => {
  test.each([
    // "What is a mix ratio and why is it important", an adhesives text: hardener as part of resin.
    [2, 0.5],
    [4, 0.25],
    [10, 0.1],
  ])('%i:1 takes %f of the resin', (resinParts, part) => {
    const [resin, hardener] = mixFor(byVolume(resinParts, 1), { readyMl: 500 }).lines;
    expect((hardener?.volumeMl ?? 0) / (resin?.volumeMl ?? 1)).toBeCloseTo(part, 12);
  });

  test('4:1 makes 1.25 pints from one pint of resin, 0.625 from a half, printed rounded as 0.63', () => {
    // Kit sizes of the same text.
    for (const [resinPints, ready] of [
      [1, 1.25],
      [0.5, 0.625],
    ] as const) {
      const mix = mixFor(byVolume(4, 1), { readyMl: ready });
      expect(mix.lines[0]?.volumeMl).toBeCloseTo(resinPints, 12);
    }
  });

  test('the first number is the resin: 4:1 read as hardener first is sixteen times the hardener', () => {
    const poured = { by: 'volume', resin: 100, hardener: 400 } as const;
    expect(hardenerOffPercent(byVolume(4, 1), poured)).toBeCloseTo(1500, 9);
  });
});

describe('the same ratio by weight', () => {
  // Derived from (wA:wB) = (vA x density A):(vB x density B).
  test('2:1 by volume of 1.15 and 0.97 g/mL is 100:42.2 by weight', () => {
    const { resinParts, hardenerParts } = recipeBy('weight', byVolume(2, 1));
    expect(resinParts).toBeCloseTo(2.3, 12);
    expect(hardenerParts).toBeCloseTo(0.97, 12);
    expect((hardenerParts / resinParts) * 100).toBeCloseTo(42.2, 1);
    const [resin, hardener] = mixFor(byVolume(2, 1), { readyMl: 300 }).lines;
    expect(((hardener?.massG ?? 0) / (resin?.massG ?? 1)) * 100).toBeCloseTo(42.2, 1);
  });

  test('weighed out as 2:1 it holds 18.6 percent too much hardener', () => {
    const poured = { by: 'weight', resin: 100, hardener: 50 } as const;
    expect(hardenerOffPercent(byVolume(2, 1), poured)).toBeCloseTo(18.6, 1);
  });
});
