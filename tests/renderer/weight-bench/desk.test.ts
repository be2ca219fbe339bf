import { describe, expect, it, vi } from 'vitest';
import { ordersToPlan } from '../../../renderer/screens/weight-bench/choose.ts';
import {
  draftErrors,
  isSameStart,
  withSanding,
  withShape,
  withStation,
  withWish,
} from '../../../renderer/screens/weight-bench/draft.ts';
import { gapPlace } from '../../../renderer/screens/weight-bench/gap-place.ts';
import { merged } from '../../../renderer/screens/weight-bench/merged-answer.ts';
import { Reckoner } from '../../../renderer/screens/weight-bench/reckoner.ts';
import {
  orderTrouble,
  stationRows,
  withoutStation,
  withStationAfter,
} from '../../../renderer/screens/weight-bench/station-rows.ts';
import type { ReckonInput, Reckoning } from '../../../shared/plan-answer.ts';
import type { PlanStart } from '../../../shared/plan-record.ts';
import { longbowInput } from '../../support/plan-input.ts';
import { cardWith } from '../board/cards.ts';
import { answered } from './answered.ts';

describe('what is typed', () => {
  it('is refused beside its field while it is no number', () => {
    expect(draftErrors(longbowInput)).toEqual({});
    const typed = withWish(longbowInput, { targetLbf: Number.NaN });
    expect(Object.keys(draftErrors(typed))).toEqual(['wish.targetLbf']);
    const station = withStation(longbowInput, { limb: 'lower', index: 1 }, { thicknessIn: 9 });
    expect(draftErrors(station)).toEqual({
      'bow.lower.stations.1.thicknessIn': 'A limb is between 1/20 and 2 inches thick.',
    });
  });

  it('changes one limb, one station, nothing else', () => {
    const typed = withStation(longbowInput, { limb: 'upper', index: 2 }, { backWidthIn: 1 });
    expect(typed.bow.upper.stations[2]?.backWidthIn).toBe(1);
    expect(typed.bow.lower).toBe(longbowInput.bow.lower);
    expect(withShape(typed, { carriedPart: 0.4 }).choices.cutShape).toEqual({
      ...longbowInput.choices.cutShape,
      carriedPart: 0.4,
    });
  });

  it('takes with the kind of sanding what it is known to take', () => {
    const figure = (mean: number) => ({ mean, sd: 0.3, jobs: 0, words: '' });
    const typed = withSanding(longbowInput, 'final sanding only', {
      'full strip': figure(1.4),
      'final sanding only': figure(0.6),
    });
    expect(typed.wish).toMatchObject({
      sanding: 'final sanding only',
      allowanceMeanThou: 0.6,
      allowanceSdThou: 0.3,
    });
  });
});

describe('stations', () => {
  const { upper, lower } = longbowInput.bow;

  it('stand side by side by their place', () => {
    const short = withoutStation(lower, 1);
    const rows = stationRows({ upper, lower: short });
    expect(rows).toHaveLength(upper.stations.length);
    expect(rows[1]).toMatchObject({ upper: 1, lower: null });
    expect(rows[2]).toMatchObject({ upper: 2, lower: 1 });
  });

  it('get a new one half way to the next, from the last to the one before', () => {
    const [a, b] = upper.stations;
    const more = withStationAfter(upper, 0);
    expect(more.stations[1]?.fromFadeIn).toBe(((a?.fromFadeIn ?? 0) + (b?.fromFadeIn ?? 0)) / 2);
    const end = withStationAfter(upper, upper.stations.length - 1);
    expect(end.stations.at(-1)).toEqual(upper.stations.at(-1));
    expect(orderTrouble({ upper: end, lower })).toBeNull();
  });

  it('never fall under three', () => {
    let limb = upper;
    for (let i = 0; i < 20; i += 1) limb = withoutStation(limb, 0);
    expect(limb.stations).toHaveLength(3);
  });

  it('say when they are out of order', () => {
    const turned = { ...upper, stations: upper.stations.toReversed() };
    expect(orderTrouble({ upper: turned, lower })).toMatch(/^Stations of the upper limb/u);
  });
});

describe('the start', () => {
  const start: PlanStart = {
    input: longbowInput,
    about: {
      orderId: 'o',
      orderNumber: '26-0001',
      rowVersion: 4,
      bowId: 'b',
      bowName: '',
      limbSetId: null,
      limbSetName: null,
    },
    geometry: null,
    reading: null,
    gaps: [],
    allowances: {
      'full strip': { mean: 1.4, sd: 0.6, jobs: 0, words: '' },
      'final sanding only': { mean: 0.6, sd: 0.3, jobs: 0, words: '' },
    },
    effectiveness: { mean: 1, sd: 0.2, jobs: 0, words: '' },
    notNow: null,
  };

  it('is the same when only the version of the order moved', () => {
    expect(isSameStart(start, { ...start, about: { ...start.about, rowVersion: 5 } })).toBe(true);
    const lower = withWish(longbowInput, { targetLbf: 44 });
    expect(isSameStart(start, { ...start, input: lower })).toBe(false);
  });

  it('leads to the place where a gap is closed', () => {
    expect(gapPlace('geometry', start.about)?.href).toBe('/orders/o?open=geometry');
    expect(gapPlace('bow', start.about)?.href).toBe('/bows/b');
    expect(gapPlace('arrival', start.about)?.href).toBe('/orders/o/unpacking');
    const whatIf = { ...start.about, orderId: null };
    expect(gapPlace('weighings', whatIf)).toBeNull();
    expect(gapPlace('geometry', whatIf)?.href).toBe('/bows/b');
    expect(gapPlace('bow', { ...whatIf, bowId: null })).toBeNull();
  });
});

describe('a sliding answer', () => {
  it('keeps the curve of the last full one', () => {
    const full = answered();
    const sliding = answered(longbowInput, 'sliding');
    expect(sliding.forceDraw).toBeNull();
    expect(merged(full, sliding)).toMatchObject({ forceDraw: full.forceDraw });
    expect(merged(null, sliding)).toBe(sliding);
  });
});

describe('asking while things change', () => {
  const answer: Reckoning = { outcome: 'no-answer', sentence: '' };
  const question = (carriedPart: number, detail: ReckonInput['detail']): ReckonInput => ({
    input: withShape(longbowInput, { carriedPart }),
    detail,
  });

  function bench() {
    const asked: { input: ReckonInput; signal: AbortSignal; done: () => void }[] = [];
    const heard: number[] = [];
    const busy = vi.fn();
    const reckoner = new Reckoner(
      (input, signal) =>
        new Promise((resolve) => {
          asked.push({ input, signal, done: () => resolve(answer) });
        }),
      {
        onBusy: busy,
        onAnswer: (_, { input }) => heard.push(input.choices.cutShape.carriedPart),
        onError: vi.fn(),
      },
    );
    return { reckoner, asked, heard, busy };
  }
  const settle = () => new Promise((resolve) => setTimeout(resolve, 0));

  it('lets one answer show while a slider moves, then asks for the newest alone', async () => {
    const { reckoner, asked, heard, busy } = bench();
    for (const part of [0.5, 0.51, 0.52, 0.53]) reckoner.ask(question(part, 'sliding'));
    expect(asked).toHaveLength(1);
    asked[0]?.done();
    await settle();
    expect(asked.map(({ input }) => input.input.choices.cutShape.carriedPart)).toEqual([0.5, 0.53]);
    asked[1]?.done();
    await settle();
    expect(heard).toEqual([0.5, 0.53]);
    expect(busy).toHaveBeenLastCalledWith(false);
  });

  it('gives up what is under way for a full answer, and never shows it', async () => {
    const { reckoner, asked, heard } = bench();
    reckoner.ask(question(0.5, 'sliding'));
    reckoner.ask(question(0.6, 'sliding'));
    reckoner.ask(question(0.7, 'full'));
    expect(asked[0]?.signal.aborted).toBe(true);
    asked[1]?.done();
    asked[0]?.done();
    await settle();
    expect(heard).toEqual([0.7]);
    expect(asked).toHaveLength(2);
  });
});

describe('orders to choose from', () => {
  it('are those whose bow is here to be lowered, nearest to the work first', () => {
    const cards = [
      cardWith({ id: 'a', number: '26-0003', stage: 'arrived', services: ['reduce-weight'] }),
      cardWith({ id: 'b', number: '26-0002', stage: 'weight-work', services: ['reduce-weight'] }),
      cardWith({ id: 'c', number: '26-0001', stage: 'agreed', services: ['strip-refinish'] }),
      cardWith({ id: 'd', number: '26-0004', stage: 'in-mail', services: ['reduce-weight'] }),
    ];
    expect(ordersToPlan(cards).map(({ id }) => id)).toEqual(['b', 'a']);
  });
});
