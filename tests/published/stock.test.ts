import { describe, expect, test } from 'vitest';
import { firstExpiredFirstOut, issueTwoPart, type Lot } from '../../core/schedule/issue.ts';
import { orderQuantity, yearlyCost } from '../../core/schedule/order-quantity.ts';
import { reorderPoint, safetyStock, safetyZ } from '../../core/schedule/reorder.ts';

const steady = { useSpread: 0, waitSpread: 0 };

describe('reorder point and safety stock', () => {
  test('W. J. Stevenson, "Operations Management", 14th ed., ch. 12, example 8: 9.40 and 59.40', () => {
    // Lead-time demand of mean 50 and deviation 5, risk 3 percent: the wait is one period.
    const flow = { ...steady, use: 50, useSpread: 5, wait: 1 };
    expect(safetyStock(flow, safetyZ[3])).toBeCloseTo(9.4, 10);
    expect(reorderPoint(flow, safetyZ[3])).toBeCloseTo(59.4, 10);
  });

  test('J. Heizer, B. Render, "Operations Management", ch. 12: uncertain wait, 513.6', () => {
    const flow = { ...steady, use: 60, wait: 6, waitSpread: 2 };
    expect(safetyStock(flow, safetyZ[10])).toBeCloseTo(153.6, 10);
    expect(reorderPoint(flow, safetyZ[10])).toBeCloseTo(513.6, 10);
    expect(Math.ceil(reorderPoint(flow, safetyZ[10]))).toBe(514);
  });

  test('uncertain use over two weeks at 10 percent risk: 105.43', () => {
    // Derived from a printed exercise's 50 and 3 a week.
    const flow = { ...steady, use: 50, useSpread: 3, wait: 2 };
    expect(reorderPoint(flow, safetyZ[10])).toBeCloseTo(105.43, 2);
  });

  test('z sigma sqrt(L): 1.65 x 40 x 3 is 198, 4.13 of them 495.6 and printed as 496', () => {
    // A printed example of safety stock at a high service factor.
    const flow = { ...steady, use: 100, useSpread: 40, wait: 9 };
    expect(safetyStock(flow, safetyZ[5])).toBeCloseTo(198, 10);
    expect(safetyStock(flow, 4.13)).toBeCloseTo(495.6, 10);
    expect(Math.ceil(safetyStock(flow, 4.13))).toBe(496);
  });

  test('both spreads at once: sqrt(wait x useSpread^2 + use^2 x waitSpread^2), from memory', () => {
    // The printed formula is garbled; with one spread 0 it must give the printed examples above.
    const flow = { use: 60, useSpread: 3, wait: 6, waitSpread: 2 };
    expect(safetyStock(flow, 1)).toBeCloseTo(Math.sqrt(6 * 9 + 3600 * 4), 10);
    expect(safetyStock(flow, 1)).toBeGreaterThan(safetyStock({ ...flow, useSpread: 0 }, 1));
  });

  test.each(Object.entries(safetyZ))('%s percent of running out: z %f', (percent, z) => {
    // The upper tail of the normal distribution, by Simpson's rule; printed z have two decimals,
    // and 1.65 for 5 percent is 1.645 taken up.
    const density = (x: number) => Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI);
    const step = 0.001;
    let area = 0;
    for (let x = z; x < 10; x += 2 * step) {
      area += (step / 3) * (density(x) + 4 * density(x + step) + density(x + 2 * step));
    }
    expect(Math.abs(area * 100 - Number(percent))).toBeLessThan(0.06);
  });

  test('printed wrongly: z said to be 1.65 and 1.28 used, 10.24 and 80.24 for 13.2 and 83.2', () => {
    const flow = { ...steady, use: 70, useSpread: 8, wait: 1 };
    expect(safetyStock(flow, 1.65)).toBeCloseTo(13.2, 10);
    expect(reorderPoint(flow, 1.65)).toBeCloseTo(83.2, 10);
    expect(safetyStock(flow, safetyZ[10])).toBeCloseTo(10.24, 10);
    expect(safetyZ[5]).toBe(1.65);
  });
});

describe('cheapest order quantity', () => {
  test.each([
    // J. Heizer, B. Render, "Operations Management", ch. 12, example 3.
    { yearlyUse: 1000, perOrder: 10, keepingPerUnit: 0.5, printed: 200 },
    // The same at 1200 a year, printed as 219.
    { yearlyUse: 1200, perOrder: 10, keepingPerUnit: 0.5, printed: 219.09 },
    // Derived from the inputs of three printed exercises.
    { yearlyUse: 19_500, perOrder: 25, keepingPerUnit: 4, printed: 493.7 },
    { yearlyUse: 5000, perOrder: 10, keepingPerUnit: 1, printed: 316.2 },
    { yearlyUse: 1800, perOrder: 30, keepingPerUnit: 5, printed: 147 },
  ])('$yearlyUse a year, $perOrder an order, $keepingPerUnit to keep: $printed', (each) => {
    expect(Math.abs(orderQuantity(each) - each.printed)).toBeLessThan(0.06);
  });

  test('example 3 goes on: 5 orders a year, 50 for ordering and 50 for keeping', () => {
    const costs = { yearlyUse: 1000, perOrder: 10, keepingPerUnit: 0.5 };
    expect(costs.yearlyUse / orderQuantity(costs)).toBeCloseTo(5, 12);
    expect(yearlyCost(costs, 200)).toBeCloseTo(100, 12);
  });
});

describe('first expired, first out: WHO, good distribution practices, Annex 5', () => {
  const lot = (id: string, receivedOn: string, expiresOn: string): Lot => ({
    id,
    receivedOn,
    expiresOn,
    onHand: 1,
  });
  const x = lot('X', '2026-01-10', '2026-12-31');
  const y = lot('Y', '2026-03-10', '2026-09-30');

  test('received later but expiring earlier goes first; by receipt it would be the other', () => {
    const issue = firstExpiredFirstOut([x, y], 1, '2026-06-01');
    expect(issue.picks).toEqual([{ lotId: 'Y', quantity: 1 }]);
    expect([x, y].toSorted((a, b) => (a.receivedOn < b.receivedOn ? -1 : 1))[0]).toBe(x);
  });

  test('an expired lot is left out, not taken first', () => {
    const issue = firstExpiredFirstOut([x, y], 2, '2026-10-01');
    expect(issue).toEqual({
      picks: [{ lotId: 'X', quantity: 1 }],
      shortBy: 1,
      expiredLotIds: ['Y'],
    });
  });

  test('the lots of two parts expire apart: good resin beside an expired hardener mixes nothing', () => {
    const sides = { resin: { lots: [x], quantity: 1 }, hardener: { lots: [y], quantity: 1 } };
    expect(issueTwoPart(sides, '2026-06-01').missing).toEqual([]);
    expect(issueTwoPart(sides, '2026-10-01').missing).toEqual([
      'All hardener on hand has expired.',
    ]);
  });
});
