import { describe, expect, test } from 'vitest';
import { type GritTableId, gritTables } from '../../core/finish/abrasive-tables.ts';
import { type Abrasive, abrasive, nearestOn } from '../../core/finish/grit.ts';
import { sequenceTroubles } from '../../core/finish/grit-sequence.ts';
import type { Grit } from '../../shared/grit.ts';

const p = (grit: number): Grit => ({ grit, scale: 'P' });
const cami = (grit: number): Grit => ({ grit, scale: 'CAMI' });
const size = (grit: Grit, table?: GritTableId) => abrasive(grit, table).micrometres;
const coarserBy = (a: Abrasive, b: Abrasive) => a.micrometres / b.micrometres;

describe('P grades, FEPA 43 / ISO 6344, average grain in micrometres', () => {
  test.each([
    [60, 269],
    [80, 201],
    [100, 162],
    [120, 125],
    [150, 100],
    [180, 82],
    [220, 68],
    [240, 58.5],
    [280, 52.2],
    [320, 46.2],
    [360, 40.5],
    [400, 35],
    [500, 30.2],
    [600, 25.8],
    [800, 21.8],
    [1000, 18.3],
    [1200, 15.3],
  ])('P%i is %f', (grit, micrometres) => {
    // Reprint of both scales on a woodworking page, 24 March 2008.
    expect(size(p(grit))).toBe(micrometres);
    expect(abrasive(p(grit)).table).toBe('reprint');
  });

  test('a second print, a dictionary of sizes, agrees from P60 to P120', () => {
    for (const grit of [60, 80, 100, 120]) {
      expect(size(p(grit), 'dictionary')).toBe(size(p(grit), 'reprint'));
    }
  });

  test('the ends of the range, as printed in a household reference: P12 1815, P2500 8.4', () => {
    expect(size(p(12), 'range-ends')).toBe(1815);
    expect(size(p(2500))).toBe(8.4);
  });
});

describe('CAMI, ANSI B74.18: three printed tables', () => {
  test.each([
    [60, 265, 268, 270],
    [80, 190, 192, 192],
    [100, 140, 141, null],
    [120, 115, null, 116],
    [150, 92, null, 93],
    [180, 82, null, 82],
    [220, 68, null, 68],
    [240, 53, null, 52],
    [280, null, null, 42],
    [320, 36, null, 35],
    [360, 28, null, 28],
    [400, 23, null, 22],
    [500, 20, null, 18],
    [600, 16, null, 15],
  ])('CAMI %i: reprint %s, dictionary %s, chart %s', (grit, reprint, dictionary, chart) => {
    const prints = { reprint, dictionary, chart };
    for (const [id, printed] of Object.entries(prints) as [GritTableId, number | null][]) {
      if (printed !== null) expect(size(cami(grit), id)).toBe(printed);
      else expect(() => abrasive(cami(grit), id)).toThrow('is in no grit table');
    }
  });

  test('the default is the reprint, and the chart where the reprint has a hole', () => {
    expect(abrasive(cami(320)).table).toBe('reprint');
    expect(abrasive(cami(280))).toMatchObject({ table: 'chart', micrometres: 42 });
  });

  test('the prints of one grit lie within a twentieth, but for the whole micrometres of 500 and 600', () => {
    for (const grit of gritTables.flatMap((each) => [...each.micrometres.keys()])) {
      const prints = gritTables
        .filter((each) => each.scale === 'CAMI')
        .flatMap((each) => each.micrometres.get(grit) ?? []);
      const apart = Math.max(...prints) / Math.min(...prints);
      if (prints.length > 1) expect(apart).toBeLessThan(grit === 500 || grit === 600 ? 1.12 : 1.05);
    }
  });
});

describe('the same number on both scales', () => {
  test('CAMI 320 is not P320: it is finer by more than a fifth, and near P400', () => {
    for (const table of ['reprint', 'chart'] as const) {
      expect(coarserBy(abrasive(p(320)), abrasive(cami(320), table))).toBeGreaterThan(1.2);
    }
    expect(nearestOn('P', abrasive(cami(320)))).toMatchObject(p(400));
  });

  test('the nearest CAMI grit to P320 is 280', () => {
    expect(nearestOn('CAMI', abrasive(p(320)))).toMatchObject(cami(280));
  });

  test.each([
    [180, 180],
    [220, 220],
    [240, 280],
    [320, 400],
    [400, 800],
    [600, 1200],
    [1000, 2000],
  ])('CAMI %i is nearest to P%i, as the prints set it', (american, european) => {
    expect(nearestOn('P', abrasive(cami(american)))).toMatchObject(p(european));
  });

  test('CAMI 500 is P1000 by the chart, and between P800 and P1000 by the reprint', () => {
    expect(nearestOn('P', abrasive(cami(500), 'chart'))).toMatchObject(p(1000));
    expect(size(cami(500), 'reprint')).toBeGreaterThan(size(p(1000)));
    expect(size(cami(500), 'reprint')).toBeLessThan(size(p(800)));
  });

  test('printed wrongly: CAMI 240 as P240, and CAMI 600 as P600', () => {
    // A popular guide to the numbers; a public converter that maps the scales 1 to 1.
    expect(nearestOn('P', abrasive(cami(240)))).not.toMatchObject(p(240));
    expect(coarserBy(abrasive(p(600)), abrasive(cami(600)))).toBeGreaterThan(1.5);
  });

  test('P600 is coarser than CAMI 400, in every print', () => {
    expect(size(p(600))).toBeGreaterThan(size(cami(400), 'reprint'));
    expect(size(p(600))).toBeGreaterThan(size(cami(400), 'chart'));
    expect(sequenceTroubles([abrasive(cami(400)), abrasive(p(600))])).toHaveLength(1);
    expect(sequenceTroubles([abrasive(p(600)), abrasive(cami(400))])).toEqual([]);
  });

  test('which of P60 and CAMI 60 is coarser turns with the print', () => {
    expect(size(p(60))).toBeGreaterThan(size(cami(60), 'reprint'));
    expect(size(p(60))).toBeLessThan(size(cami(60), 'chart'));
  });
});

describe('steps', () => {
  test.each([
    // Derived from the printed sizes.
    [80, 120, 1.61],
    [120, 180, 1.52],
    [180, 240, 1.4],
    [120, 220, 1.84],
    [80, 180, 2.45],
  ])('P%i to P%i is %f to 1', (from, to, ratio) => {
    expect(coarserBy(abrasive(p(from)), abrasive(p(to)))).toBeCloseTo(ratio, 2);
  });
});
