import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { hardenerOffPercent, type Mix, mixFor } from '../../../core/finish/mix.ts';
import { type MixRecipe, recipeBy } from '../../../core/finish/mix-recipe.ts';

const topCoat: MixRecipe = {
  by: 'volume',
  resinParts: 2,
  hardenerParts: 1,
  thinnerPercent: 10,
  density: { resin: 1.15, hardener: 0.97, thinner: 0.87 },
};
const noDensities: MixRecipe['density'] = { resin: null, hardener: null, thinner: null };

const amount = fc.double({ min: 0.1, max: 20, noNaN: true });
const density = fc.double({ min: 0.6, max: 2, noNaN: true });
const recipes: fc.Arbitrary<MixRecipe> = fc.record({
  by: fc.constantFrom('volume', 'weight'),
  resinParts: amount,
  hardenerParts: fc.oneof(fc.constant(0), amount),
  thinnerPercent: fc.oneof(fc.constant(0), fc.double({ min: 0.1, max: 50, noNaN: true })),
  density: fc.record({ resin: density, hardener: density, thinner: density }),
});

const volumes = (mix: Mix) => mix.lines.map((line) => line.volumeMl ?? Number.NaN);

describe('properties', () => {
  test('twice the amount is twice of every part, and the parts add up to it', () => {
    fc.assert(
      fc.property(recipes, fc.double({ min: 1, max: 2000, noNaN: true }), (recipe, readyMl) => {
        const once = mixFor(recipe, { readyMl });
        const twice = mixFor(recipe, { readyMl: readyMl * 2 });
        expect((once.readyMl ?? 0) / readyMl).toBeCloseTo(1, 9);
        for (const [index, volume] of volumes(once).entries()) {
          expect((volumes(twice)[index] ?? 0) / volume).toBeCloseTo(2, 9);
        }
      }),
    );
  });

  test('by volume and by weight are one mix', () => {
    fc.assert(
      fc.property(recipes, (recipe) => {
        const other = recipeBy(recipe.by === 'volume' ? 'weight' : 'volume', recipe);
        const mix = mixFor(recipe, { readyMl: 100 });
        for (const [index, volume] of volumes(mixFor(other, { readyMl: 100 })).entries()) {
          expect(volume / (volumes(mix)[index] ?? Number.NaN)).toBeCloseTo(1, 9);
        }
        expect(mixFor(recipe, { readyG: mix.readyG ?? 0 }).readyMl).toBeCloseTo(100, 6);
      }),
    );
  });

  test('what is poured as reckoned is never off', () => {
    const twoPart = recipes.filter((recipe) => recipe.hardenerParts > 0);
    fc.assert(
      fc.property(twoPart, (recipe) => {
        const [resin, hardener] = mixFor(recipe, { readyMl: 100 }).lines;
        const poured = {
          by: 'weight',
          resin: resin?.massG ?? 0,
          hardener: hardener?.massG ?? 0,
        } as const;
        expect(hardenerOffPercent(recipe, poured)).toBeCloseTo(0, 9);
      }),
    );
  });
});

describe('one cup', () => {
  test('330 mL of 2:1 thinned by a tenth: 200, 100 and 30 mL, and what the scale reads', () => {
    const mix = mixFor(topCoat, { readyMl: 330 });
    expect(mix.lines.map((line) => line.part)).toEqual(['resin', 'hardener', 'thinner']);
    for (const [index, [volumeMl, massG, scaleReadsG]] of [
      [200, 230, 230],
      [100, 97, 327],
      [30, 26.1, 353.1],
    ].entries()) {
      expect(mix.lines[index]?.volumeMl).toBeCloseTo(volumeMl ?? 0, 9);
      expect(mix.lines[index]?.massG).toBeCloseTo(massG ?? 0, 9);
      expect(mix.lines[index]?.scaleReadsG).toBeCloseTo(scaleReadsG ?? 0, 9);
    }
    expect(mix.readyG).toBeCloseTo(353.1, 9);
  });

  test('without densities only the measure of the recipe is told', () => {
    const mix = mixFor({ ...topCoat, density: noDensities }, { readyMl: 330 });
    expect(mix.lines[0]).toMatchObject({ massG: null, scaleReadsG: null });
    expect(mix).toMatchObject({ readyG: null });
    expect(mix.readyMl).toBeCloseTo(330, 9);
  });

  test('one missing density leaves the scale unknown from that part on', () => {
    const density = { ...topCoat.density, hardener: null };
    const mix = mixFor({ ...topCoat, density }, { readyMl: 330 });
    expect(mix.lines.map((line) => line.scaleReadsG === null)).toEqual([false, true, true]);
  });

  test('a one-part finish has no line for hardener', () => {
    const mix = mixFor({ ...topCoat, hardenerParts: 0 }, { readyMl: 110 });
    expect(mix.lines.map((line) => line.part)).toEqual(['resin', 'thinner']);
  });
});

describe('refusals', () => {
  test('volume asked of a recipe by weight without densities names the part', () => {
    const byWeight = { ...topCoat, by: 'weight', density: noDensities } as const;
    expect(() => mixFor(byWeight, { readyMl: 100 })).toThrow(
      'Enter the density of the resin to change between volume and weight.',
    );
  });

  test.each([
    [{ resinParts: 0 }, 'Parts of resin must be more than 0.'],
    [{ hardenerParts: -1 }, 'Parts of hardener cannot be less than 0.'],
    [{ thinnerPercent: Number.NaN }, 'Thinner cannot be less than 0.'],
    [
      { density: { ...topCoat.density, resin: 0 } },
      'The density of the resin must be more than 0.',
    ],
  ])('%o', (change, sentence) => {
    expect(() => mixFor({ ...topCoat, ...change }, { readyMl: 100 })).toThrow(sentence);
  });

  test('nothing wanted, and hardener in a one-part finish', () => {
    expect(() => mixFor(topCoat, { readyG: 0 })).toThrow('The ready mix must be more than 0.');
    expect(() =>
      hardenerOffPercent({ ...topCoat, hardenerParts: 0 }, { by: 'volume', resin: 1, hardener: 1 }),
    ).toThrow('This finish has no hardener.');
  });

  test('no hardener poured is all of it missing', () => {
    expect(hardenerOffPercent(topCoat, { by: 'volume', resin: 2, hardener: 0 })).toBe(-100);
  });
});
