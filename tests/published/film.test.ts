import { describe, expect, test } from 'vitest';
import {
  fluidOunces,
  millilitresPerCubicInch,
  millilitresPerFluidOunce,
  readyAmountMl,
  usualTransferPercent,
} from '../../core/finish/amount.ts';
import {
  cubicInchesPerGallon,
  dryFilm,
  dryFilmFromMass,
  micrometresPerMil,
  squareFeetPerGallon,
  squareFeetPerGallonAtOneMil,
  squareMetresPerLitre,
  wetFilm,
} from '../../core/finish/film.ts';
import { mlPerUsFlOz } from '../../shared/stores.ts';

const unthinned = (solidsPercent: number) => ({ solidsPercent, thinnerPercent: 0 });

describe('wet and dry film', () => {
  // Source of the figures: "Calculation DFT WFT Measurement", training notes on coating inspection.
  test('8 mil wet at 35 percent solids is 2.8 mil dry, and back', () => {
    expect(dryFilm(8, unthinned(35))).toBeCloseTo(2.8, 12);
    expect(wetFilm(2.8, unthinned(35))).toBeCloseTo(8, 12);
  });

  test('thinned by a tenth: 2.8 mil dry needs 8.8 mil wet; 8 mil wet leaves 2.545', () => {
    // Derived: the notes print the formula, their own line for the example is garbled.
    const thinned = { solidsPercent: 35, thinnerPercent: 10 };
    expect(wetFilm(2.8, thinned)).toBeCloseTo(8.8, 12);
    expect(dryFilm(8, thinned)).toBeCloseTo(2.545, 3);
  });
});

describe('the units', () => {
  // NIST SP 811 (2008), App. B, where it does not say otherwise.
  test('a US gallon is 231 cubic inches and 3.785412 L', () => {
    expect(cubicInchesPerGallon).toBe(231);
    expect((cubicInchesPerGallon * millilitresPerCubicInch) / 1000).toBeCloseTo(3.785412, 6);
    // Derived, 231 x 2.54 cubed, without rounding.
    expect((cubicInchesPerGallon * millilitresPerCubicInch) / 1000).toBeCloseTo(3.785411784, 12);
    expect(fluidOunces(cubicInchesPerGallon * millilitresPerCubicInch)).toBeCloseTo(128, 10);
  });

  test('a mil is 2.54e-5 m; the nominal 25 of coating specifications is 1.6 percent less', () => {
    // UFGS 09971 works with 25 micrometres to the mil.
    expect(micrometresPerMil).toBe(25.4);
    expect(25 / micrometresPerMil).toBeCloseTo(0.984, 3);
  });

  test('a US fluid ounce is 29.57 mL, in finish room and stores alike', () => {
    expect(millilitresPerFluidOunce).toBeCloseTo(29.57353, 5);
    expect(millilitresPerFluidOunce).toBeCloseTo(mlPerUsFlOz, 10);
  });

  test('printed wrongly: 28.413 mL to the ounce beside US gallons; that is the imperial ounce', () => {
    // A sheet of conversions of units; 128 of those would be 3.637 L, which is no gallon of 231.
    expect(Math.abs(millilitresPerFluidOunce - 28.413)).toBeGreaterThan(1.1);
    expect(millilitresPerFluidOunce / 28.41306).toBeCloseTo(1.0408, 4);
  });
});

describe('spreading rate', () => {
  test('a gallon covers 1604.17 square feet at 1 mil, 160.417 at 10 mil', () => {
    // 231 / 0.001 / 144; tables of wet-film formulae of the paint trade.
    expect(squareFeetPerGallonAtOneMil).toBeCloseTo(1604.1667, 4);
    expect(squareFeetPerGallon(10, unthinned(100))).toBeCloseTo(160.417, 3);
  });

  test('65 percent solids at 5 mil dry: 208.52 ft2/gal, printed from the rounded 1604', () => {
    // "Spreading Rate", training notes on coating inspection.
    expect(
      squareFeetPerGallon(5, unthinned(65)) * (1604 / squareFeetPerGallonAtOneMil),
    ).toBeCloseTo(208.52, 10);
    expect(squareFeetPerGallon(5, unthinned(65))).toBeCloseTo(208.52, 1);
  });

  test('65 percent solids at 125 micrometres dry: 5.2 m2/L', () => {
    // Same notes; the same as 10 x percent / micrometres.
    expect(squareMetresPerLitre(125, unthinned(65))).toBeCloseTo(5.2, 12);
    expect(squareMetresPerLitre(125, unthinned(65))).toBeCloseTo((10 * 65) / 125, 12);
  });

  test('thinned by a quarter, a gallon of ready finish covers a fifth less', () => {
    // Derived from WFT = DFT (1 + T) / VS of the same notes.
    const thinned = { solidsPercent: 65, thinnerPercent: 25 };
    const full = squareFeetPerGallon(5, unthinned(65));
    expect(squareFeetPerGallon(5, thinned) / full).toBeCloseTo(0.8, 12);
  });

  test('both systems of units tell one rate, with 25.4 micrometres to the mil', () => {
    // NIST SP 811 (2008), App. B: foot 0.3048 m, gallon 3.785412 L.
    const american = squareFeetPerGallon(125 / micrometresPerMil, unthinned(65));
    expect((american * 0.3048 ** 2) / 3.785412).toBeCloseTo(5.2, 5);
  });

  test('a tack coat of 25 to 50 micrometres wet is 1 to 2 mil', () => {
    // UFGS 09971, recoat windows; it works with a nominal 25 micrometres to the mil.
    expect(25 / micrometresPerMil).toBeCloseTo(1, 1);
    expect(50 / micrometresPerMil).toBeCloseTo(2, 1);
  });

  test('printed wrongly: the metric formula with 100 in place of 1000', () => {
    // The same notes print 100 in the formula and reckon with 1000.
    expect(squareMetresPerLitre(125, unthinned(65))).not.toBeCloseTo(0.52, 1);
  });

  /** Rounded to whole square feet, from 1604 in place of 1604.17. */
  const asPrinted = 0.5 + 0.17;

  /** "Calculation DFT WFT Measurement", training notes: ft2/gal at 1, 2, 3, 4, 5, 6, 8 and 10 mil dry. */
  const table: [number, number[]][] = [
    [30, [481, 241, 160, 120, 96, 80, 60, 48]],
    [35, [561, 281, 187, 140, 112, 94, 70, 56]],
    [40, [642, 321, 214, 160, 128, 107, 80, 64]],
    [50, [802, 401, 267, 201, 160, 134, 100, 80]],
    [60, [962, 481, 321, 241, 192, 160, 120, 96]],
    [65, [1043, 521, 348, 261, 209, 174, 130, 104]],
    [70, [1123, 561, 374, 281, 225, 187, 140, 112]],
    [100, [1604, 802, 535, 401, 321, 267, 201, 160]],
  ];
  test.each(table)('the printed row of %i percent', (solidsPercent, row) => {
    const mils = [1, 2, 3, 4, 5, 6, 8, 10];
    for (const [index, printed] of row.entries()) {
      const exact = squareFeetPerGallon(mils[index] ?? Number.NaN, unthinned(solidsPercent));
      expect(Math.abs(exact - printed)).toBeLessThan(asPrinted);
    }
  });

  test('printed wrongly: 72 percent at 2 mil is 577 ft2/gal, not 527', () => {
    expect(Math.abs(squareFeetPerGallon(2, unthinned(72)) - 577)).toBeLessThan(asPrinted);
    expect(Math.abs(squareFeetPerGallon(2, unthinned(72)) - 527)).toBeGreaterThan(50);
  });
});

describe('film from mass', () => {
  // R. Joseph, column on film thickness from mass (December 2007): 1604 lb VS / (lb/gal x ft2).
  const laid = { massG: 453.59237, poundsPerGallon: 10, areaFt2: 100 };

  test('one pound at 10 lb/gal and half solids on 100 ft2 is 0.802 mil', () => {
    expect(dryFilmFromMass(laid, unthinned(50))).toBeCloseTo(0.802, 3);
  });

  test('printed wrongly: grams multiplied by 453.6 instead of divided', () => {
    const multiplied = (1604 * laid.massG * 453.6 * 0.5) / (10 * 100);
    expect(multiplied / dryFilmFromMass(laid, unthinned(50))).toBeGreaterThan(200_000);
  });
});

describe('how much to mix', () => {
  const job = { areaIn2: 12 * 144, wetMil: 2 / 0.4, coats: 1, leftInGunMl: 0 };

  test('12 ft2, 2 mil dry of 40 percent: 15.96 fl oz at 30 percent transfer, 7.37 at 65', () => {
    // Derived from the published relations.
    expect(fluidOunces(readyAmountMl({ ...job, transferPercent: 30 }))).toBeCloseTo(15.96, 2);
    expect(fluidOunces(readyAmountMl({ ...job, transferPercent: 65 }))).toBeCloseTo(7.37, 2);
  });

  test('a new shop reckons with 25 percent, inside the 20 to 50 of small work, never with 65', () => {
    // R. Joseph (April 2009), tests for the South Coast Air Quality Management District; 65 is what
    // that district asks of spray guns, measured on panels, 25 what Wisconsin Administrative Code
    // NR 440.48, Table 1, counts for air spray of open furniture.
    expect(usualTransferPercent).toBe(25);
  });

  test('a gun that gets 30 percent on the work makes 90 ft2 of a 300 ft2 gallon, at 15 percent 45', () => {
    // Georgia Pollution Prevention Assistance Division, fact sheet on high-pressure spray guns.
    const gallonMl = cubicInchesPerGallon * millilitresPerCubicInch;
    const wetMil = squareFeetPerGallonAtOneMil / 300;
    const mixed = (areaFt2: number, transferPercent: number) =>
      readyAmountMl({
        areaIn2: areaFt2 * 144,
        wetMil,
        coats: 1,
        transferPercent,
        leftInGunMl: 0,
      });
    expect(mixed(300, 100)).toBeCloseTo(gallonMl, 8);
    expect(mixed(90, 30)).toBeCloseTo(gallonMl, 8);
    expect(mixed(45, 15)).toBeCloseTo(gallonMl, 8);
  });
});
