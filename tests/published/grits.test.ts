import { describe, expect, test } from 'vitest';
import { type GritTableId, gritTables } from '../../core/finish/abrasive-tables.ts';
import { type Abrasive, abrasive, nearestOn } from '../../core/finish/grit.ts';
import {
  lastGritTroubles,
  type Substrate,
  sandingAdvice,
  sequenceTroubles,
} from '../../core/finish/grit-sequence.ts';
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

  test('the nearest CAMI grit to P320 is 280, never 320', () => {
    expect(nearestOn('CAMI', abrasive(p(320)))).toMatchObject(cami(280));
    const away = (table: 'reprint' | 'chart') =>
      coarserBy(abrasive(p(320)), abrasive(cami(320), table));
    for (const table of ['reprint', 'chart'] as const) {
      expect(away(table)).toBeGreaterThan(coarserBy(abrasive(p(320)), abrasive(cami(280))));
    }
  });

  test('macrogrits to P220, microgrits from P240: up to there the scales go side by side', () => {
    // The boundary as printed in the reprint, the dictionary and a maker's table of equivalences.
    const both = gritTables
      .filter(({ id, scale }) => id === 'reprint' && scale === 'CAMI')
      .flatMap(({ micrometres }) => [...micrometres.keys()]);
    const nearestNumber = (grit: number) => nearestOn('P', abrasive(cami(grit), 'reprint')).grit;
    // CAMI 100 as reprinted, 140 micrometres, lies between P100 and P120.
    const macro = both.filter((grit) => grit <= 220 && grit !== 100);
    expect(macro).toEqual([60, 80, 120, 150, 180, 220]);
    expect(macro.map(nearestNumber)).toEqual(macro);
    const micro = both.filter((grit) => grit >= 240);
    expect(micro).toEqual([240, 320, 360, 400, 500, 600]);
    for (const grit of micro) expect(nearestNumber(grit)).toBeGreaterThan(grit);
    // 68 micrometres and more, 58.4 and less, as a household reference prints the two groups.
    expect(size(p(220))).toBe(68);
    expect(Math.abs(size(p(240)) - 58.4)).toBeLessThan(0.11);
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
    // On one row of the reprint or the chart, or within about a twentieth of each other.
    expect(nearestOn('P', abrasive(cami(american)))).toMatchObject(p(european));
    const apart = Math.abs(Math.log(size(cami(american)) / size(p(european))));
    expect(apart).toBeLessThan(Math.log(1.06));
  });

  test('CAMI 800 is printed as P1500, but without its size: it is in no table and not guessed', () => {
    expect(() => abrasive(cami(800))).toThrow('CAMI 800 is in no grit table.');
    expect(size(p(1500))).toBe(13);
  });

  test('CAMI 500 is P1000 by the chart, and between P800 and P1000 by the reprint', () => {
    expect(nearestOn('P', abrasive(cami(500), 'chart'))).toMatchObject(p(1000));
    expect(size(cami(500), 'reprint')).toBeGreaterThan(size(p(1000)));
    expect(size(cami(500), 'reprint')).toBeLessThan(size(p(800)));
  });

  test('printed wrongly: CAMI 240 as P240, a CAMI 440 as P600', () => {
    // A popular guide to the numbers. CAMI 240 is 53 micrometres: P280 is 52.2, P240 58.5.
    expect(nearestOn('P', abrasive(cami(240)))).not.toMatchObject(p(240));
    // No table has a CAMI 440; P600 lies between CAMI 360 and 400.
    expect(() => abrasive(cami(440))).toThrow('is in no grit table');
    expect(size(cami(360))).toBeGreaterThan(size(p(600)));
    expect(size(cami(400))).toBeLessThan(size(p(600)));
  });

  test('printed wrongly: one number for both scales, 600 as P600 of 25.8 micrometres', () => {
    // A public converter that maps the scales 1 to 1; wrong above 220.
    expect(coarserBy(abrasive(p(600)), abrasive(cami(600)))).toBeGreaterThan(1.5);
    expect(nearestOn('P', abrasive(cami(600)))).toMatchObject(p(1200));
  });

  test('P600 is coarser than CAMI 400, in every print', () => {
    expect(size(p(600))).toBeGreaterThan(size(cami(400), 'reprint'));
    expect(size(p(600))).toBeGreaterThan(size(cami(400), 'chart'));
    expect(sequenceTroubles([abrasive(cami(400)), abrasive(p(600))])).toHaveLength(1);
    expect(sequenceTroubles([abrasive(p(600)), abrasive(cami(400))])).toEqual([]);
  });

  test('P36 is coarser than CAMI 36, 538 to 535', () => {
    // Both from the dictionary of sizes; another print has 530 for the American one.
    expect(size(p(36))).toBe(538);
    expect(size(cami(36))).toBe(535);
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

  test('between 50 and 120 one grit may be skipped, not two', () => {
    // An abrasives trade column, July 2009, and a trade page. No standard has a rule: advice only.
    expect(sequenceTroubles([abrasive(p(60)), abrasive(p(100))])).toEqual([]);
    expect(sequenceTroubles([abrasive(p(60)), abrasive(p(120))])).toHaveLength(1);
    expect(sequenceTroubles([abrasive(p(50)), abrasive(p(80))])).toEqual([]);
    expect(sequenceTroubles([abrasive(p(50)), abrasive(p(100))])).toHaveLength(1);
  });
});

describe('last grit before finish, by what is sanded', () => {
  const suits = (substrate: Substrate, grit: Grit) =>
    lastGritTroubles(substrate, abrasive(grit)).length === 0;

  test('bare wood: 180 or 220, and not finer than 220 under a film', () => {
    // "Sanding 101", a timber yard's page: not over 220 under varnish or lacquer; an abrasives
    // trade column, July 2009: 180 or 220, finer burnishes.
    expect(sandingAdvice.wood.last).toEqual({ coarsest: p(180), finest: p(220) });
    for (const grit of [180, 220]) {
      expect(suits('wood', p(grit))).toBe(true);
      expect(suits('wood', cami(grit))).toBe(true);
    }
    for (const grit of [240, 280, 320]) expect(suits('wood', p(grit))).toBe(false);
  });

  test('the dissent, 150 enough for most finishes, is told as coarse, not as wrong paper', () => {
    // "Taking Sanding Seriously", a woodworking knowledge base.
    expect(lastGritTroubles('wood', abrasive(p(150)))).toEqual([
      'P150 (100 µm) is coarse for wood before finish: end with P180 to P220.',
    ]);
    expect(sandingAdvice.wood.source).toContain('one dissent holds 150 enough');
  });

  test('fibre-glass before a top coat: start at 180 to 200, finish at 320', () => {
    // A coating maker's manual for composites; plans for composite aircraft list 220 and 320 last.
    const { sequence } = sandingAdvice.glass;
    const [first, last] = [sequence[0], sequence.at(-1)].map((grit) => grit?.grit ?? 0);
    expect(first).toBeGreaterThanOrEqual(180);
    expect(first).toBeLessThanOrEqual(200);
    expect(last).toBe(320);
    expect(suits('glass', p(320))).toBe(true);
    for (const grit of [180, 220]) expect(suits('glass', p(grit))).toBe(false);
  });
});
