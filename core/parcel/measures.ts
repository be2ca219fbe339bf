import type { Over } from './carrier-profile.ts';
import type { ParcelSize } from './size.ts';

export interface Measured extends ParcelSize {
  weightLb: number;
}

export interface Measure {
  key: keyof Over;
  label: string;
  unit: string;
  of(measured: Measured): number;
}

/** What a limit can be set on, in the words it is told in. */
export const measures: readonly Measure[] = [
  { key: 'longestIn', label: 'The longest side', unit: 'in', of: (m) => m.sidesIn[0] },
  { key: 'secondIn', label: 'The second side', unit: 'in', of: (m) => m.sidesIn[1] },
  {
    key: 'lengthPlusGirthIn',
    label: 'Length plus girth',
    unit: 'in',
    of: (m) => m.lengthPlusGirthIn,
  },
  { key: 'volumeIn3', label: 'The volume', unit: 'cubic in', of: (m) => m.volumeIn3 },
  { key: 'weightLb', label: 'The weight', unit: 'lb', of: (m) => m.weightLb },
];
