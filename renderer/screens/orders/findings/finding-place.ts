import { decimal, inchFraction } from '../../../../shared/measure.ts';

export const bowParts = ['upper limb', 'lower limb', 'riser', 'take-down joint'] as const;
export type BowPart = (typeof bowParts)[number];
export const bowFaces = ['back', 'belly', 'edge', 'side'] as const;
export type BowFace = (typeof bowFaces)[number];

/** Where on the bow something was found, as it is asked for. */
export interface FindingPlace {
  part: BowPart | null;
  face: BowFace | null;
  /** Along a limb, inches from the fade; null where it was not measured. */
  fromFadeIn: number | null;
  /** Anything the choices do not say: `at the tip overlay`. */
  more: string;
}

export const noPlace: FindingPlace = { part: null, face: null, fromFadeIn: null, more: '' };

export const isLimb = (part: BowPart | null) => part === 'upper limb' || part === 'lower limb';

/** Sixteenths read as on a rule; anything finer stays a decimal. */
function inches(value: number): string {
  return Number.isInteger(value * 16) ? inchFraction(value) : decimal(value, 2);
}

/** The place as one plain line: `upper limb, back, 9 in from the fade`. Empty when nothing was said. */
export function placeLine(place: FindingPlace): string {
  const { part, face, fromFadeIn, more } = place;
  const isMeasured = isLimb(part) && fromFadeIn !== null && Number.isFinite(fromFadeIn);
  return [
    part ?? '',
    face ?? '',
    isMeasured ? `${inches(fromFadeIn)} in from the fade` : '',
    more.trim(),
  ]
    .filter((word) => word !== '')
    .join(', ');
}

/** Longest distance that a limb has, inches; nothing is measured past its tip. */
const longestLimbIn = 40;

export interface PlaceErrors {
  fromFadeIn?: string;
  words?: string;
}

/** What is wrong with the place, by field; empty when it can be written down. */
export function placeErrors({ part, fromFadeIn, more }: FindingPlace): PlaceErrors {
  const isOff = fromFadeIn !== null && !(fromFadeIn >= 0 && fromFadeIn <= longestLimbIn);
  return {
    ...(isLimb(part) && isOff ? { fromFadeIn: `Between 0 and ${longestLimbIn} in.` } : {}),
    ...(part === null && more.trim() === '' ? { words: 'Say where on the bow.' } : {}),
  };
}
