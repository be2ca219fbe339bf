import { expect, test } from 'vitest';
import type { WeighingFields } from '../../../renderer/screens/orders/weighings/weighing-fields.ts';
import {
  weighingErrors,
  weighingInput,
} from '../../../renderer/screens/orders/weighings/weighing-input.ts';
import type { LimbSet } from '../../../shared/contract/limb-sets.ts';
import { cardWith } from '../board/cards.ts';

const fields: WeighingFields = {
  phase: 'arrival',
  drawReference: 'amo',
  riserNote: '',
  scaleId: 'scale-1',
  rigZeroLbf: null,
  braceIn: 7.5,
  stringNote: 'shop string',
  stringTrack: '',
  supportPoint: '',
  pullPoint: '',
  tillerIn: null,
  temperatureF: null,
  moisturePct: null,
  strungMinutes: 30,
  flexedFirst: true,
  note: '',
  pulls: [46, 45, null].map((forceLbf, key) => ({ key, drawIn: 28, forceLbf })),
};

const limbSet: LimbSet = {
  id: 'limbs-1',
  rowVersion: 1,
  bowId: 'bow-1',
  createdAt: '2026-03-02T09:00:00.000Z',
  name: 'longs',
  upperSerial: '',
  lowerSerial: '',
  amoLengthIn: null,
  markedWeightLbf: null,
  markedDrawIn: null,
  markedDrawReference: 'unknown',
  riserName: '',
  riserLengthIn: null,
  riserPadDeg: null,
  notes: '',
};

const whole = { card: cardWith(), cameAs: 'whole-bow', limbSet: null } as const;
const limbsOnly = { card: cardWith(), cameAs: 'limbs-only', limbSet } as const;

test('a weighing is of the limbs the order is about, without rows nobody pulled', () => {
  expect(weighingInput(whole, fields)).toMatchObject({ orderId: 'order-1', limbSetId: null });
  expect(weighingInput(limbsOnly, { ...fields, riserNote: 'shop riser' })).toMatchObject({
    limbSetId: 'limbs-1',
    riserNote: 'shop riser',
    rigZeroLbf: 0,
    strungMinutes: 30,
    pulls: [
      { drawIn: 28, forceLbf: 46 },
      { drawIn: 28, forceLbf: 45 },
    ],
  });
});

test('limbs that came alone are not weighed without their riser being said', () => {
  expect(weighingErrors(whole, fields)).toEqual({});
  expect(weighingErrors(limbsOnly, { ...fields, riserNote: ' ' })).toEqual({
    riserNote: 'Say which riser they were weighed on.',
  });
  expect(weighingInput(limbsOnly, fields)).toBeNull();
});

test('numbers out of reach are refused in words', () => {
  expect(weighingErrors(whole, { ...fields, moisturePct: 60, strungMinutes: -1 })).toEqual({
    moisturePct: 'Moisture is between 2 and 30 percent.',
    strungMinutes: 'Strung for between 0 minutes and a week.',
  });
});
