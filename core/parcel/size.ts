import type { CarrierProfile, SideRounding } from './carrier-profile.ts';
import type { Parcel } from './parcel.ts';

export interface ParcelSize {
  /** Sides in inches as the carrier counts them, longest first. */
  sidesIn: readonly [number, number, number];
  /** Around the thickest part, square to the length, inches. */
  girthIn: number;
  lengthPlusGirthIn: number;
  volumeIn3: number;
}

/** Keeps sums of decimal inches from falling a hair over a limit they are exactly at. */
const hair = 1e-9;

function rounded(inches: number, rounding: SideRounding): number {
  if (rounding === 'next-inch') return Math.ceil(inches - hair);
  return rounding === 'nearest-inch' ? Math.round(inches) : inches;
}

function boxOf(parcel: Parcel): [number, number, number] {
  switch (parcel.shape) {
    case 'box':
      return [...parcel.sidesIn];
    case 'round-tube':
      return [parcel.lengthIn, parcel.diameterIn, parcel.diameterIn];
    case 'three-sided-tube':
      // Height of an equilateral triangle: the box around the tube, by its extreme points.
      return [parcel.lengthIn, parcel.sideIn, (parcel.sideIn * Math.sqrt(3)) / 2];
  }
}

function girthOf(
  parcel: Parcel,
  sides: ParcelSize['sidesIn'],
  tubes: CarrierProfile['tubes'],
): number {
  if (tubes === 'round' && parcel.shape === 'round-tube') return Math.PI * parcel.diameterIn;
  if (tubes === 'round' && parcel.shape === 'three-sided-tube') return 3 * parcel.sideIn;
  return 2 * (sides[1] + sides[2]);
}

/**
 * Length, girth and volume as this carrier counts them. The length is the longest side, whatever
 * way the box was measured.
 */
export function parcelSize(
  parcel: Parcel,
  rules: Pick<CarrierProfile, 'rounding' | 'tubes'>,
): ParcelSize {
  const [a, b, c] = boxOf(parcel)
    .map((side) => rounded(side, rules.rounding))
    .sort((x, y) => y - x) as [number, number, number];
  const sidesIn = [a, b, c] as const;
  const girthIn = girthOf(parcel, sidesIn, rules.tubes);
  return { sidesIn, girthIn, lengthPlusGirthIn: a + girthIn, volumeIn3: a * b * c };
}

/** Over the limit; exactly at it, give or take the hair, is not over. */
export function isOver(value: number, limit: number | undefined): boolean {
  return limit !== undefined && value > limit + hair * Math.max(1, limit);
}

/** Whole pounds as carriers bill them: the next full pound. */
export function nextPound(pounds: number): number {
  return Math.ceil(pounds - hair);
}
