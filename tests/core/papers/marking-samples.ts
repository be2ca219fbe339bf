import { templateOffsets } from '../../../core/limb/template.ts';
import type {
  MarkingLimb,
  MarkingTemplateData,
} from '../../../core/papers/marking-template-data.ts';

/** A limb of straight taper with a cut as narrowing makes it. */
export function markingLimb(
  limb: 'upper' | 'lower',
  lengthIn: number,
  offIn: number,
  every = 4,
  widestIn = 1.5,
): MarkingLimb {
  const places = new Set([0, 2, 3, lengthIn / 2, lengthIn]);
  for (let at = every; at < lengthIn; at += every) places.add(at);
  const off = (at: number) => {
    if (at <= 2) return 0;
    if (at < 3) return offIn * (at - 2);
    return at <= lengthIn / 2 ? offIn : (offIn * (lengthIn - at)) / (lengthIn / 2);
  };
  const stations = [...places]
    .sort((a, b) => a - b)
    .map((at) => {
      const half = (widestIn - (widestIn - 0.4) * (at / lengthIn)) / 2;
      const cut = off(at);
      return {
        fromFadeIn: at,
        presentIn: { left: half, right: half + 1 / 32 },
        newIn: { left: half - cut, right: half + 1 / 32 - cut / 2 },
      };
    });
  return { ...templateOffsets({ limb, face: 'back', stations }), lengthIn };
}

export const markingSample: MarkingTemplateData = {
  format: 'letter',
  copy: 'bench',
  printedAt: '2026-03-02T09:00:00.000Z',
  number: '26-0147',
  bowLine: 'longbow 66", Oldfield Heron, marked 52# @ 28"',
  plan: { version: 2, acceptedOn: '2026-03-01', words: 'Narrowing to 45# @ 28", tiller 1/8"' },
  limbs: [markingLimb('upper', 24.5, 3 / 64), markingLimb('lower', 24, 1 / 32)],
  uncut: [],
};

/** One limb, on one sheet. */
export const markingShortest: MarkingTemplateData = {
  ...markingSample,
  limbs: [markingLimb('lower', 7.5, 1 / 64)],
  uncut: ['Nothing comes off the width of the upper limb.'],
};

/** The longest and widest limb there may be, with many stations and a long name; its fellow is short. */
export const markingLong: MarkingTemplateData = {
  ...markingSample,
  bowLine: `longbow 108", ${'Oldfield Heron of the northern yard '.repeat(4)}, marked 152# @ 28"`,
  limbs: [markingLimb('upper', 50, 0.137, 1.25, 4), markingLimb('lower', 9, 0.111, 1.25, 4)],
};
