import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { columnsOf } from '../../../renderer/screens/board/columns.ts';
import { everything, fits, hides } from '../../../renderer/screens/board/filter.ts';
import { holdingOf } from '../../../renderer/screens/board/holding.ts';
import { isBackward } from '../../../renderer/screens/board/is-backward.ts';
import { whatChanged } from '../../../renderer/screens/board/what-changed.ts';
import { cardWith, hold } from './cards.ts';

beforeEach(() => {
  vi.useFakeTimers({ now: new Date(2026, 10, 25, 9, 0), toFake: ['Date'] });
});
afterEach(() => {
  vi.useRealTimers();
});

describe('columns', () => {
  const stagesOf = (columns: ReturnType<typeof columnsOf>) => columns.map(({ stage }) => stage);

  it('are the stages on some route, in route order, without closed ones', () => {
    const cards = [cardWith({ route: ['arrived', 'finish', 'shipped'], stage: 'arrived' })];
    expect(stagesOf(columnsOf(cards, cards, everything))).toEqual(['arrived', 'finish']);
    expect(stagesOf(columnsOf(cards, cards, { ...everything, closed: true }))).toEqual([
      'arrived',
      'finish',
      'shipped',
    ]);
  });

  it('keep a stage whose cards the filter hides', () => {
    expect(stagesOf(columnsOf([cardWith()], [], everything))).toContain('requested');
  });

  it('show one room only', () => {
    const columns = columnsOf([cardWith()], [cardWith()], { ...everything, room: 'bench' });
    expect(stagesOf(columns)).toEqual(['weight-work']);
  });

  it('put what is due first on top and what has no date last', () => {
    const cards = [
      cardWith({ id: 'a', number: '26-0001' }),
      cardWith({ id: 'b', number: '26-0002', promisedOn: '2026-12-01' }),
      cardWith({ id: 'c', number: '26-0003', promisedOn: '2026-11-20' }),
    ];
    const [first] = columnsOf(cards, cards, everything);
    expect(first?.cards.map(({ id }) => id)).toEqual(['c', 'b', 'a']);
  });
});

describe('filter', () => {
  it('finds every word in number, customer, bow or service', () => {
    const card = cardWith();
    const text = (words: string) => fits(card, { ...everything, text: words });
    expect(text('hale kestrel')).toBe(true);
    expect(text('26-0001')).toBe(true);
    expect(text('reduce')).toBe(true);
    expect(text('hale quill')).toBe(false);
  });

  it('knows late, due in a week and without a date', () => {
    const due = (promisedOn: string | null, choice: 'late' | 'week' | 'none') =>
      fits(cardWith({ promisedOn }), { ...everything, due: choice });
    expect(due('2026-11-24', 'late')).toBe(true);
    expect(due('2026-11-25', 'late')).toBe(false);
    expect(due('2026-12-02', 'week')).toBe(true);
    expect(due('2026-12-03', 'week')).toBe(false);
    expect(due(null, 'week')).toBe(false);
    expect(due(null, 'none')).toBe(true);
  });

  it('picks what is on hold and says when it hides anything', () => {
    expect(fits(cardWith(), { ...everything, onHold: true })).toBe(false);
    expect(fits(cardWith({ hold }), { ...everything, onHold: true })).toBe(true);
    expect(hides(everything)).toBe(false);
    expect(hides({ ...everything, closed: true })).toBe(false);
    expect(hides({ ...everything, room: 'bench' })).toBe(true);
  });
});

describe('what a card says', () => {
  it('names what holds it, the stop first', () => {
    const held = holdingOf(cardWith({ openStops: 2, hold, waitingConsents: 1 }));
    expect(held).toEqual([
      { kind: 'stop', text: 'Do not draw: 2 stop findings' },
      { kind: 'attention', text: 'On hold: waits for leather' },
      { kind: 'attention', text: 'Waiting: 1 consent' },
    ]);
    expect(holdingOf(cardWith())).toEqual([]);
    expect(holdingOf(cardWith({ goingHome: 'refused' }))).toEqual([
      { kind: 'attention', text: 'Going home: the shop refused the work' },
    ]);
  });

  it('says that it is under its target, and leads to where that is decided', () => {
    const under = {
      byLbf: 0.8,
      nowLbf: 44.2,
      targetLbf: 45,
      drawIn: 28,
      isSanded: true,
      since: '2026-11-20T10:00:00.000Z',
    };
    const line = (isSanded: boolean) =>
      holdingOf(cardWith({ underTarget: { ...under, isSanded } }));
    expect(line(true)).toEqual([
      {
        kind: 'stop',
        text: '0.8 lb under its target: take nothing more off',
        href: '/orders/order-1?open=undershoot',
      },
    ]);
    expect(line(false)[0]?.href).toBe('/orders/order-1?open=weighings:after-sanding');
  });

  it('tells backward from forward by the order of its own route', () => {
    const card = cardWith({
      route: ['arrived', 'strip-sand', 'weight-work'],
      stage: 'weight-work',
    });
    expect(isBackward({ card, to: 'strip-sand' })).toBe(true);
    expect(isBackward({ card: { ...card, stage: 'strip-sand' }, to: 'weight-work' })).toBe(false);
  });

  it('says what somebody else changed', () => {
    expect(whatChanged(cardWith(), cardWith({ stage: 'in-mail', hold }))).toEqual([
      'It went from "Requested" to "In the mail".',
      'It was put on hold: waits for leather',
    ]);
    expect(whatChanged(cardWith({ hold }), cardWith({ promisedOn: '2026-12-12' }))).toEqual([
      'It is no longer on hold.',
      'It is promised for 12 Dec.',
    ]);
    expect(whatChanged(cardWith(), cardWith({ goingHome: 'broken' }))).toEqual([
      'It is going home: the bow is broken.',
    ]);
    expect(whatChanged(cardWith(), cardWith({ rowVersion: 2 }))).toHaveLength(1);
    expect(whatChanged(cardWith(), undefined)).toHaveLength(1);
  });
});
