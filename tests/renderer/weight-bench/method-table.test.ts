import { describe, expect, it } from 'vitest';
import {
  limitName,
  methodTable,
  offLines,
  shownColumn,
  tillerText,
  whyNotAccept,
} from '../../../renderer/screens/weight-bench/method-table.ts';
import { changedInput } from '../../support/plan-input.ts';
import { answered, planOf } from './answered.ts';

const answer = answered();
const table = methodTable(answer, 28);
const row = (name: string) => table.rows.find((one) => one.name === name)?.cells ?? [];

describe('ways side by side', () => {
  it('begins with sanding only and keeps the order of the answer', () => {
    expect(table.columns[0]?.title).toBe('Sanding only');
    expect(table.columns.map(({ method }) => method)).toEqual(
      answer.methods.map(({ method }) => method),
    );
  });

  it('marks the recommended way in words, and only that', () => {
    const marked = table.columns.filter(({ said }) => said === 'Recommended');
    expect(marked.map(({ method }) => method)).toEqual([answer.recommended]);
  });

  it('gives every row one cell a way', () => {
    for (const { cells } of table.rows) expect(cells).toHaveLength(table.columns.length);
  });

  it('tells narrowing per side and in total, twice the side', () => {
    const { upper } = planOf(answer, 'narrowing');
    const [text = ''] = offLines('upper', upper);
    const [, side, total] = /^Upper: (\S+)" per side, (\S+)" in total$/u.exec(text) ?? [];
    expect(Number(side)).toBeCloseTo(upper.offPerSideIn, 3);
    expect(Number(total)).toBeCloseTo(2 * upper.offPerSideIn, 3);
    expect(Number(side)).toBeGreaterThan(0);
  });

  it('tells the weight with its 80 % band', () => {
    const at = table.columns.findIndex(({ method }) => method === 'narrowing');
    const { weightLbf, bandLbf } = planOf(answer, 'narrowing').afterFinishing;
    const [weight, band] = row('Weight')[at] ?? [];
    expect(weight).toBe(`${weightLbf.toFixed(1)} lb when finished`);
    expect(band).toBe(`80 % between ${bandLbf[0].toFixed(1)} and ${bandLbf[1].toFixed(1)}`);
  });

  it('names the draw at every row of weights, and at no other', () => {
    const said = methodTable(answer, 26.5).rows.flatMap((one) =>
      one.said === undefined ? [] : [`${one.name} ${one.said}`],
    );
    expect(said).toEqual(['Weight @ 26.5"', 'Stop at @ 26.5"']);
  });

  it('says what sanding alone leaves', () => {
    expect(row('What comes off')[0]).toEqual(['Upper: nothing', 'Lower: nothing']);
    expect(table.columns[0]?.said).toBe('Stays over the target');
  });
});

describe('refused ways', () => {
  const thin = answered(
    changedInput({ bow: { back: { facing: 'E-glass', glassNowIn: 0.031, glassMadeIn: 0.04 } } }),
  );
  const refused = methodTable(thin, 28).columns.find(({ method }) => method === 'thinning');

  it('name the limit at the head and give its figure', () => {
    expect(refused?.said).toBe('Refused: glass');
    const cells = methodTable(thin, 28).rows.find(({ name }) => name === 'Refused because')?.cells;
    expect(cells?.flat().join(' ')).toMatch(/0\.03\d? in/u);
  });

  it('say why they cannot be accepted; the recommended one may be', () => {
    if (refused === undefined) throw new Error('thinning is not in the answer');
    expect(whyNotAccept(refused)).toMatch(/^Thinning both faces is refused\. Glass:/u);
    const best = table.columns.find(({ state }) => state === 'recommended');
    expect(best && whyNotAccept(best)).toBeNull();
    const sanding = table.columns[0];
    expect(sanding && whyNotAccept(sanding)).toMatch(/over the target/u);
  });

  it('has words for a limit nobody named yet', () => {
    expect(limitName('side-stiffness')).toBe('side stiffness');
    expect(limitName('something-new')).toBe('something-new');
  });
});

describe('the way that is shown', () => {
  it('is the one asked for, else the recommended one', () => {
    expect(shownColumn(table.columns, 'thinning')?.method).toBe('thinning');
    expect(shownColumn(table.columns, null)?.method).toBe(answer.recommended);
    expect(shownColumn([], null)).toBeNull();
  });

  it('leaves out a way without an answer', () => {
    const columns = methodTable(
      {
        recommended: null,
        methods: [{ outcome: 'no-answer', method: 'narrowing', sentence: 'It did not settle.' }],
      },
      28,
    );
    expect(shownColumn(columns.columns, 'narrowing')).toBeNull();
    expect(columns.rows).toEqual([
      { name: 'Refused because', isText: true, cells: [['It did not settle.']] },
    ]);
  });
});

describe('tiller in words', () => {
  it('has a sign and 64ths', () => {
    expect(tillerText(0.125)).toBe('+1/8"');
    expect(tillerText(-1 / 64)).toBe('-1/64"');
    expect(tillerText(0.003)).toBe('even');
  });
});
