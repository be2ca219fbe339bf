import { expect, test } from 'vitest';
import {
  emptyParcel,
  fieldsOf,
  questionOf,
} from '../../../renderer/screens/orders/shipping/parcel-fields.ts';
import { sizeWords } from '../../../renderer/screens/orders/shipping/size-words.ts';

const box = {
  ...emptyParcel,
  carrierId: 'carrier-1',
  carrierName: 'Postal ground',
  lengthIn: 66.5,
  widthIn: 5,
  heightIn: 5,
  weightLb: 6.5,
};

test('the limits are asked once every measure is there', () => {
  expect(questionOf(box)).toEqual({
    carrierId: 'carrier-1',
    shape: 'box',
    lengthIn: 66.5,
    widthIn: 5,
    heightIn: 5,
    weightLb: 6.5,
  });
  for (const missing of [
    { carrierId: null },
    { lengthIn: null },
    { widthIn: Number.NaN },
    { heightIn: null },
    { heightIn: Number.NaN },
    { weightLb: 0 },
  ]) {
    expect(questionOf({ ...box, ...missing }), JSON.stringify(missing)).toBeNull();
  }
});

test('a tube is asked about without a height', () => {
  expect(questionOf({ ...box, shape: 'round-tube', heightIn: null })?.heightIn).toBeNull();
  expect(questionOf({ ...box, shape: 'three-sided-tube' })?.heightIn).toBeNull();
});

test('the form takes up what may be changed of a parcel, and nothing else', () => {
  const parcel = {
    ...box,
    id: 'parcel-1',
    rowVersion: 3,
    direction: 'out',
    assessment: null,
    recordedAt: '2026-03-02T09:00:00.000Z',
    personName: 'Otto Reed',
    struckReason: null,
  } as const;
  expect(fieldsOf(parcel)).toEqual(box);
});

test('sizes in words say what is missing', () => {
  expect(sizeWords(box)).toBe('Box 66.5 x 5 x 5 in, 6.5 lb');
  expect(sizeWords({ ...box, heightIn: null })).toBe('Box 66.5 x 5 in, a side is missing, 6.5 lb');
  expect(sizeWords({ ...box, shape: 'round-tube', weightLb: null })).toBe(
    'Round tube 66.5 x 5 in, not weighed',
  );
  expect(sizeWords(emptyParcel)).toBe('Box, not measured, not weighed');
});
