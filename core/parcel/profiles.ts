import type { CarrierProfile } from './carrier-profile.ts';

/**
 * Generic profiles to start from. The figures are those of common services on the given day;
 * the shop checks them against its carrier's guide and changes them in Settings.
 */
export const startingProfiles: readonly CarrierProfile[] = [
  {
    name: 'Postal ground',
    asOf: '2026-11-25',
    rounding: 'none',
    tubes: 'round',
    accepted: { lengthPlusGirthIn: 130, weightLb: 70 },
    dimensional: { divisor: 166, overIn3: 1728 },
    surcharges: [
      { name: 'Oversized: over 108 in length plus girth', over: { lengthPlusGirthIn: 108 } },
      { name: 'Nonstandard: over 30 in long', over: { longestIn: 30 } },
      { name: 'Nonstandard: over 2 cubic feet', over: { volumeIn3: 3456 } },
    ],
  },
  {
    name: 'Private carrier A',
    asOf: '2026-11-25',
    rounding: 'next-inch',
    tubes: 'as-box',
    accepted: { longestIn: 108, lengthPlusGirthIn: 165, weightLb: 150 },
    dimensional: { divisor: 139, overIn3: null },
    surcharges: [
      {
        name: 'Additional handling',
        over: { longestIn: 48, secondIn: 30, weightLb: 50, volumeIn3: 8640 },
      },
      {
        name: 'Large package',
        over: { longestIn: 96, lengthPlusGirthIn: 130, volumeIn3: 17_280, weightLb: 110 },
        minimumLb: 90,
      },
    ],
  },
];
