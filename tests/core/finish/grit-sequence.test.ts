import { describe, expect, test } from 'vitest';
import { abrasive, gritsOf } from '../../../core/finish/grit.ts';
import {
  lastGritTroubles,
  type Substrate,
  sandingAdvice,
  sequenceTroubles,
} from '../../../core/finish/grit-sequence.ts';
import { type Grit, gritWithSize } from '../../../shared/grit.ts';

const p = (grit: number) => abrasive({ grit, scale: 'P' });
const cami = (grit: number) => abrasive({ grit, scale: 'CAMI' });
const substrates = Object.keys(sandingAdvice) as Substrate[];

describe('a grit', () => {
  test('carries scale, size and table, and is written with its scale', () => {
    expect(p(320)).toEqual({ grit: 320, scale: 'P', micrometres: 46.2, table: 'reprint' });
    expect(gritWithSize(cami(320))).toBe('CAMI 320 (36 µm)');
  });

  test.each<Grit>([
    { grit: 321, scale: 'P' },
    { grit: 1500, scale: 'CAMI' },
  ])('$scale $grit is in no table and is refused', (grit) => {
    expect(() => abrasive(grit)).toThrow('is in no grit table. Choose another grit.');
  });

  test('grits of a scale go from coarse to fine, and their numbers rise with them', () => {
    for (const scale of ['P', 'CAMI'] as const) {
      const numbers = gritsOf(scale).map((each) => each.grit);
      expect(numbers.length).toBeGreaterThan(10);
      expect(numbers).toEqual(numbers.toSorted((a, b) => a - b));
    }
  });
});

describe('a sequence', () => {
  test('neighbours of one scale, coarse to fine, raise nothing', () => {
    for (const scale of ['P', 'CAMI'] as const) {
      expect(sequenceTroubles(gritsOf(scale).filter(({ grit }) => grit >= 36))).toEqual([]);
    }
  });

  test('one grit skipped between 50 and 120 is allowed, two are not', () => {
    for (const scale of ['P', 'CAMI'] as const) {
      const coarse = gritsOf(scale).filter(({ grit }) => grit >= 50 && grit <= 120);
      for (const [index, from] of coarse.entries()) {
        const [one, two] = [coarse[index + 2], coarse[index + 3]];
        if (one) expect(sequenceTroubles([from, one])).toEqual([]);
        if (two) expect(sequenceTroubles([from, two])).toHaveLength(1);
      }
    }
    expect(sequenceTroubles([p(60), p(100), p(150)])).toEqual([]);
    expect(sequenceTroubles([p(80), p(150)])).toEqual([
      'From P80 (201 µm) to P150 (100 µm) is a large step, 2.01 to 1: put a grit between.',
    ]);
  });

  test('going back, and staying, are told apart', () => {
    expect(sequenceTroubles([p(320), p(220)])).toEqual([
      'P220 (68 µm) is coarser than P320 (46.2 µm) before it.',
    ]);
    expect(sequenceTroubles([p(400), cami(320)])).toEqual([
      'CAMI 320 (36 µm) is about as coarse as P400 (35 µm) before it.',
    ]);
  });

  test('nothing to say of one grit or none', () => {
    expect(sequenceTroubles([])).toEqual([]);
    expect(sequenceTroubles([p(220)])).toEqual([]);
  });
});

describe('advice for a substrate', () => {
  test.each(substrates)('%s: its own sequence passes both checks', (substrate) => {
    const sequence = sandingAdvice[substrate].sequence.map((grit) => abrasive(grit));
    const last = sequence.at(-1);
    expect(sequenceTroubles(sequence)).toEqual([]);
    expect(last && lastGritTroubles(substrate, last)).toEqual([]);
  });

  test('glass wants a finer last grit than wood', () => {
    expect(lastGritTroubles('glass', p(220))).toEqual([
      'P220 (68 µm) is coarse for glass before finish: end with P280 to P400.',
    ]);
    expect(lastGritTroubles('wood', p(320))).toEqual([
      'P320 (46.2 µm) is fine for wood before finish: end with P180 to P220.',
    ]);
    expect(lastGritTroubles('overlay', p(150))[0]).toContain('coarse for an overlay');
  });

  test('CAMI 320 is judged by its size: as P400, inside the range for glass', () => {
    expect(lastGritTroubles('glass', cami(320))).toEqual([]);
    expect(lastGritTroubles('glass', cami(400))).toHaveLength(1);
  });
});
