import type { WorkOrderPlan } from '../../../core/papers/work-order-plan.ts';
import { inchFraction } from '../../../shared/measure.ts';

/** Cuts of a straight taper, every `every` inches. */
function cutRows(count: number, every: number): WorkOrderPlan['cuts'][number]['rows'] {
  return Array.from({ length: count }, (_, i) => {
    // A 64th off each side.
    const offIn = i === 0 ? 0 : 1 / 64;
    const nowIn = 1.2 - 0.02 * i;
    const words = (value: number) =>
      value === 0 ? 'nothing' : `${value.toFixed(3)}" (${inchFraction(value, 64)})`;
    return {
      fromFade: `${1 + i * every}"`,
      widthNow: `${nowIn.toFixed(3)}"`,
      offEachSide: words(offIn),
      offInAll: words(2 * offIn),
      newWidth: `${(nowIn - 2 * offIn).toFixed(3)}"`,
    };
  });
}

export const planSample: WorkOrderPlan = {
  title: 'Plan 2, accepted 2026-03-01 by Otto Reed',
  facts: [
    ['Method', 'Narrowing, both faces alike'],
    ['Target', '45# @ 28"'],
    ['Stop cutting at', '47.0 lb, of which sanding takes about 1.2 lb'],
    ['Tiller', '1/16" upper less lower'],
    ['Sanding after it', 'full strip'],
  ],
  doesNotFit: [],
  cuts: [
    { limb: 'upper', rows: cutRows(8, 3) },
    { limb: 'lower', rows: cutRows(8, 3) },
  ],
  faces: [],
  notes: [
    'This is the whole cut: work towards it bite by bite, weigh after each, and stop at the weight, not at the width.',
  ],
};

export const planOutdated: WorkOrderPlan = {
  ...planSample,
  facts: [],
  doesNotFit: [
    'This plan does not fit any more: plan again, cut nothing by it.',
    'The limbs were measured again: from measurement 1 to measurement 2.',
  ],
  cuts: [],
  notes: [],
};

/** More stations than one page holds, and both faces of both limbs. */
export const planLong: WorkOrderPlan = {
  ...planSample,
  cuts: [
    { limb: 'upper', rows: cutRows(24, 1) },
    { limb: 'lower', rows: cutRows(4, 5) },
  ],
  faces: ['Upper, back', 'Upper, belly', 'Lower, back', 'Lower, belly'].map((where) => ({
    where,
    off: '2.4 thou',
    glassLeft: '36.1 thou',
  })),
};
