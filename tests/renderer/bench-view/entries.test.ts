import { expect, it } from 'vitest';
import {
  glassSaid,
  nextSign,
  nothingAnswered,
} from '../../../renderer/screens/bench-view/glass-signs.ts';
import { readKept } from '../../../renderer/screens/bench-view/kept-entry.ts';
import {
  type CutFace,
  type CutPlace,
  freshRemeasure,
  type RemeasureEntry,
  remeasured,
  remeasureEntry,
  remeasureSaid,
  waitingFace,
  waitingPlace,
  widthTrouble,
  withFace,
  withWidth,
} from '../../../renderer/screens/bench-view/remeasure-entry.ts';
import { reasonText } from '../../../renderer/screens/bench-view/strike-reasons.ts';
import { nextPull, weighSaid } from '../../../renderer/screens/bench-view/weigh-entry.ts';

const place = (limb: CutPlace['limb'], fromFadeIn: number): CutPlace => ({
  limb,
  fromFadeIn,
  beforeIn: 1.2,
  expectedIn: 1.169,
});
const places = [place('upper', 6), place('upper', 8), place('lower', 6)] as const;
const empty: RemeasureEntry = freshRemeasure;

it('asks for one width after another and can go back to one', () => {
  expect(waitingPlace(places, empty)).toBe(places[0]);
  const one = withWidth(empty, places[0], 1.17);
  expect(waitingPlace(places, one)).toBe(places[1]);
  expect(waitingPlace(places, { ...one, at: 'upper 6' })).toBe(places[0]);
  const all = withWidth(withWidth(one, places[1], 1.17), places[2], 1.17);
  expect(waitingPlace(places, all)).toBeNull();
});

const faces: CutFace[] = [
  { limb: 'upper', face: 'belly', plannedThou: 2 },
  { limb: 'lower', face: 'belly', plannedThou: 1 },
];

it('takes what came off a face where it was measured, and lets the rest stand', () => {
  const [upper, lower] = faces as [CutFace, CutFace];
  expect(waitingFace(faces, empty)).toBe(upper);
  const one = withFace(empty, upper, null);
  expect(waitingFace(faces, one)).toBe(lower);
  expect(remeasureSaid([], faces, withFace(one, lower, null))).toBe(
    'What was not measured counts as it was meant.',
  );
  const both = withFace(one, lower, 1.5);
  expect(waitingFace(faces, both)).toBeNull();
  expect(remeasureSaid([], faces, both)).toContain('1 of 2 faces measured.');
  const step = { removalId: 'removal-1', rowVersion: 2, places: [], faces };
  expect(remeasured(step, both)).toEqual({
    removalId: 'removal-1',
    rowVersion: 2,
    widths: [],
    faces: [{ limb: 'lower', face: 'belly', thou: 1.5 }],
  });
});

it('writes the width of every place', () => {
  const step = { removalId: 'removal-1', rowVersion: 2, places, faces: [] };
  const entry = withWidth(withWidth(empty, places[0], 1.17), places[2], 1.16);
  expect(remeasured(step, entry).widths).toEqual([
    { limb: 'upper', fromFadeIn: 6, widthIn: 1.17 },
    { limb: 'lower', fromFadeIn: 6, widthIn: 1.16 },
  ]);
  expect(remeasureSaid(places, [], entry)).toBe('3 widths re-measured.');
});

it('doubts a width that grew or shrank far more than was meant', () => {
  expect(widthTrouble(places[0], 1.17)).toBeNull();
  expect(widthTrouble(places[0], 1.21)).toContain('Wider than before');
  expect(widthTrouble(places[0], 1.1)).toContain('Much narrower');
});

it('looks for four signs and reads back what was seen', () => {
  expect(nextSign(nothingAnswered)).toBe('showThrough');
  const none = { showThrough: false, strands: false, runOut: false, exposedCore: false };
  expect(nextSign(none)).toBeNull();
  expect(glassSaid(none)).toBe('Glass sound: none of the four signs.');
  expect(glassSaid({ ...none, strands: true, exposedCore: true })).toBe(
    'Glass not sound: lifted strands, bare core or glue line.',
  );
});

const weighing = {
  drawIn: 28,
  pulls: [],
  rigZeroLbf: 0,
  braceIn: 7.25,
  scaleId: 'scale-1',
  stringNote: 'shop string',
  isReading: false,
};
const pulls = (...forces: number[]) => forces.map((forceLbf) => ({ drawIn: 28, forceLbf }));

it('drops the first pull and reads back the weight once two count', () => {
  expect(nextPull(weighing, true)).toContain('first pull is dropped');
  expect(nextPull({ ...weighing, pulls: pulls(49) }, true)).toContain('reading 1 of 2');
  expect(weighSaid({ ...weighing, pulls: pulls(49, 47.8) }, 28)).toBeNull();
  expect(weighSaid({ ...weighing, pulls: pulls(49, 47.8, 47.8) }, 28)?.said).toBe(
    '47.8 lb at 28 in.',
  );
});

it('says at once that no checked scale is chosen, before anybody pulls', () => {
  expect(nextPull(weighing, false)).toMatch(/scale .* press Change/);
});

it('reads no kept entry that has lost its shape', () => {
  const holding = (text: string | null) => ({ getItem: () => text }) as unknown as Storage;
  expect(readKept(holding(JSON.stringify(empty)), 'x', remeasureEntry)).toEqual(empty);
  expect(readKept(holding('{"widthsIn": 3}'), 'x', remeasureEntry)).toBeNull();
  expect(readKept(holding('{broken'), 'x', remeasureEntry)).toBeNull();
  expect(readKept(holding(null), 'x', remeasureEntry)).toBeNull();
});

it('keeps a reason with words or without', () => {
  expect(reasonText('Misread', '')).toBe('Misread');
  expect(reasonText('It slipped', ' string jumped off ')).toBe('It slipped: string jumped off');
});
