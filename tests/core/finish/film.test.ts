import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readyAmountMl } from '../../../core/finish/amount.ts';
import {
  dryFilm,
  dryFilmFromMass,
  readySolidsPercent,
  wetFilm,
} from '../../../core/finish/film.ts';

const solids = fc.record({
  solidsPercent: fc.double({ min: 1, max: 100, noNaN: true }),
  thinnerPercent: fc.double({ min: 0, max: 100, noNaN: true }),
});
const mil = fc.double({ min: 0.01, max: 50, noNaN: true });

test('wet from dry undoes dry from wet, and thinner only ever makes the film thinner', () => {
  fc.assert(
    fc.property(mil, solids, (film, each) => {
      expect(wetFilm(dryFilm(film, each), each) / film).toBeCloseTo(1, 9);
      const unthinned = { ...each, thinnerPercent: 0 };
      expect(dryFilm(film, each)).toBeLessThanOrEqual(dryFilm(film, unthinned));
    }),
  );
});

test('solids of the ready mix are what the wet film is multiplied by', () => {
  const thinned = { solidsPercent: 35, thinnerPercent: 10 };
  expect((8 * readySolidsPercent(thinned)) / 100).toBeCloseTo(dryFilm(8, thinned), 12);
});

test('film from mass agrees with film from volume', () => {
  const each = { solidsPercent: 40, thinnerPercent: 0 };
  // A gallon of 9 lb on the area it covers at 5 mil wet.
  const laid = { massG: 9 * 453.59237, poundsPerGallon: 9, areaFt2: 231 / 0.005 / 144 };
  expect(dryFilmFromMass(laid, each)).toBeCloseTo(2, 9);
});

describe('amount to mix', () => {
  const coating = {
    areaIn2: 400,
    wetMil: 4,
    coats: 3,
    transferPercent: 30,
    leftInGunMl: 15,
  };

  test('two limbs, three coats of 4 mil: 4.8 cubic inches on the work, and what misses it', () => {
    expect(readyAmountMl(coating)).toBeCloseTo((4.8 * 16.387064) / 0.3 + 15, 9);
  });

  test('what stays in the gun does not grow with the coats', () => {
    const one = readyAmountMl({ ...coating, coats: 1 }) - 15;
    expect(readyAmountMl({ ...coating, coats: 2 }) - 15).toBeCloseTo(2 * one, 9);
  });

  test.each([
    [{ areaIn2: 0 }, 'The area must be more than 0.'],
    [{ wetMil: Number.NaN }, 'The wet film must be more than 0.'],
    [{ coats: 1.5 }, 'Give one coat or more.'],
    [{ transferPercent: 101 }, 'No more than 100 percent of the finish can reach the work.'],
    [{ transferPercent: 0 }, 'What reaches the work must be more than 0 and at most 100 percent.'],
    [{ leftInGunMl: -1 }, 'What stays in the gun cannot be less than 0.'],
  ])('%o is refused', (change, sentence) => {
    expect(() => readyAmountMl({ ...coating, ...change })).toThrow(sentence);
  });
});

test.each([
  [{ solidsPercent: 0, thinnerPercent: 0 }, 'Solids by volume must be more than 0'],
  [{ solidsPercent: 101, thinnerPercent: 0 }, 'at most 100 percent'],
  [{ solidsPercent: 40, thinnerPercent: -1 }, 'Thinner cannot be less than 0.'],
])('%o is refused', (each, sentence) => {
  expect(() => dryFilm(5, each)).toThrow(sentence);
});
