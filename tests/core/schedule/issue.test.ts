import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  expired,
  firstExpiredFirstOut,
  issueTwoPart,
  type Lot,
  onHandInDate,
} from '../../../core/schedule/issue.ts';
import { onHand, onHandByLot } from '../../../core/schedule/stock.ts';

const today = '2026-06-15';
const lot = (id: string, expiresOn: string | null, held: number): Lot => ({
  id,
  expiresOn,
  receivedOn: '2026-01-01',
  onHand: held,
});

describe('on hand', () => {
  test('is the sum of the moves, without binary dust', () => {
    const moves = [0.1, 0.2, -0.3].map((quantity) => ({ lotId: 'a', quantity }));
    expect(onHand(moves)).toBe(0);
    expect(onHand([])).toBe(0);
  });

  test('lot by lot', () => {
    const moves = [
      { lotId: 'a', quantity: 32 },
      { lotId: 'b', quantity: 16 },
      { lotId: 'a', quantity: -4.5 },
    ];
    expect([...onHandByLot(moves)]).toEqual([
      ['a', 27.5],
      ['b', 16],
    ]);
  });

  test('more taken than booked in stays visible', () => {
    expect(onHand([{ lotId: 'a', quantity: -2 }])).toBe(-2);
  });

  test('a move that is no number is refused', () => {
    expect(() => onHand([{ lotId: 'a', quantity: Number.NaN }])).toThrow('is not a number');
  });
});

describe('properties of first expired, first out', () => {
  const days = fc.integer({ min: 1, max: 28 }).map((d) => `2026-06-${String(d).padStart(2, '0')}`);
  const stock = fc
    .array(fc.record({ expiresOn: fc.option(days), held: fc.integer({ min: 0, max: 9 }) }), {
      maxLength: 12,
    })
    .map((lots) => lots.map((each, index) => lot(`lot ${index}`, each.expiresOn, each.held)));
  const wanted = fc.integer({ min: 1, max: 40 });
  const held = (lots: readonly Lot[], id: string) => lots.find((each) => each.id === id);

  test('never picks an expired lot, never more than it holds, and accounts for all', () => {
    fc.assert(
      fc.property(stock, wanted, (lots, quantity) => {
        const { picks, shortBy } = firstExpiredFirstOut(lots, quantity, today);
        for (const pick of picks) {
          const from = held(lots, pick.lotId);
          expect(from && expired(from, today)).toBe(false);
          expect(pick.quantity).toBeLessThanOrEqual(from?.onHand ?? 0);
        }
        const picked = picks.reduce((sum, pick) => sum + pick.quantity, 0);
        expect(picked + shortBy).toBe(quantity);
        expect(shortBy).toBe(Math.max(0, quantity - onHandInDate(lots, today)));
      }),
    );
  });

  test('picks in order of expiry and empties a lot before the next', () => {
    fc.assert(
      fc.property(stock, wanted, (lots, quantity) => {
        const { picks } = firstExpiredFirstOut(lots, quantity, today);
        const ends = picks.map((pick) => held(lots, pick.lotId)?.expiresOn ?? '9999-12-31');
        expect(ends).toEqual(ends.toSorted());
        for (const pick of picks.slice(0, -1)) {
          expect(pick.quantity).toBe(held(lots, pick.lotId)?.onHand);
        }
      }),
    );
  });
});

describe('days', () => {
  test('the last day is still good', () => {
    expect(expired({ expiresOn: today }, today)).toBe(false);
    expect(expired({ expiresOn: '2026-06-14' }, today)).toBe(true);
    expect(expired({ expiresOn: null }, today)).toBe(false);
  });

  test('equal days: the lot received first', () => {
    const younger = { ...lot('a', '2026-09-01', 1), receivedOn: '2026-03-01' };
    const older = { ...lot('b', '2026-09-01', 1), receivedOn: '2026-02-01' };
    const { picks } = firstExpiredFirstOut([younger, older], 1, today);
    expect(picks).toEqual([{ lotId: 'b', quantity: 1 }]);
  });

  test('odd days and amounts are refused', () => {
    expect(() => expired({ expiresOn: '9/1/26' }, today)).toThrow('year, month and day');
    expect(() => firstExpiredFirstOut([], 0, today)).toThrow('must be more than 0');
  });
});

describe('a two-part finish', () => {
  const resin = (...lots: Lot[]) => ({ lots, quantity: 8 });

  test('fresh resin does not help an expired hardener', () => {
    const issue = issueTwoPart(
      {
        resin: resin(lot('r', '2027-01-01', 32)),
        hardener: { lots: [lot('h', '2026-05-31', 16)], quantity: 4 },
      },
      today,
    );
    expect(issue.missing).toEqual(['All hardener on hand has expired.']);
    expect(issue.resin.picks).toEqual([{ lotId: 'r', quantity: 8 }]);
    expect(issue.hardener).toMatchObject({ picks: [], shortBy: 4, expiredLotIds: ['h'] });
  });

  test('each side takes its own first lot', () => {
    const issue = issueTwoPart(
      {
        resin: resin(lot('r1', '2027-01-01', 32), lot('r2', '2026-07-01', 32)),
        hardener: {
          lots: [lot('h1', '2026-08-01', 16), lot('h2', '2026-12-01', 16)],
          quantity: 4,
        },
      },
      today,
    );
    expect(issue.missing).toEqual([]);
    expect(issue.resin.picks[0]?.lotId).toBe('r2');
    expect(issue.hardener.picks[0]?.lotId).toBe('h1');
  });

  test('none, too little and expired are told apart', () => {
    const missing = (...lots: Lot[]) =>
      issueTwoPart(
        { resin: resin(...lots), hardener: { lots: [lot('h', null, 9)], quantity: 4 } },
        today,
      ).missing;
    expect(missing()).toEqual(['There is no resin on hand.']);
    expect(missing(lot('r', null, 3))).toEqual(['There is not enough resin in date.']);
    expect(missing(lot('r', '2026-01-01', 30))).toEqual(['All resin on hand has expired.']);
  });
});
