import type { Limb } from '../../../shared/bows.ts';
import { inchFraction } from '../../../shared/measure.ts';
import { z } from '../../../shared/zod.ts';

/** A place that was cut and is measured again. */
export interface CutPlace {
  limb: Limb;
  fromFadeIn: number;
  /** Before the cut, inches. */
  beforeIn: number;
  /** What the cut was meant to leave, inches. */
  expectedIn: number;
}

/** Widths as they were given, by place; a place that is missing was not measured yet. */
export const remeasureEntry = z.strictObject({
  widthsIn: z.record(z.string().max(40), z.number().min(0.05).max(4)),
  isReading: z.boolean(),
  /** The place that waits where somebody went back to it. */
  at: z.string().max(40).nullable(),
});
export type RemeasureEntry = z.infer<typeof remeasureEntry>;

export const placeKey = ({ limb, fromFadeIn }: Pick<CutPlace, 'limb' | 'fromFadeIn'>): string =>
  `${limb} ${fromFadeIn}`;

export const limbWord = (limb: Limb): string => (limb === 'upper' ? 'Upper' : 'Lower');

/** `Upper limb, 6 in from the fade`. */
export function placeText({ limb, fromFadeIn }: Pick<CutPlace, 'limb' | 'fromFadeIn'>): string {
  return `${limbWord(limb)} limb, ${inchFraction(fromFadeIn)} in from the fade`;
}

/** The place that takes the next width, or null once all are there. */
export function waitingPlace(places: readonly CutPlace[], entry: RemeasureEntry): CutPlace | null {
  return (
    places.find((place) => placeKey(place) === entry.at) ??
    places.find((place) => entry.widthsIn[placeKey(place)] === undefined) ??
    null
  );
}

/** One more width; the next place waits. */
export function withWidth(entry: RemeasureEntry, place: CutPlace, widthIn: number): RemeasureEntry {
  return { ...entry, at: null, widthsIn: { ...entry.widthsIn, [placeKey(place)]: widthIn } };
}

/** A width that grew, or lost far more than was meant, was probably read wrong; otherwise null. */
export function widthTrouble(place: CutPlace, widthIn: number): string | null {
  const grewIn = widthIn - place.beforeIn;
  if (grewIn > 0.003) return `Wider than before the cut (${place.beforeIn.toFixed(3)} in).`;
  const missIn = place.expectedIn - widthIn;
  if (missIn > 1 / 32) return `Much narrower than wanted (${place.expectedIn.toFixed(3)} in).`;
  return null;
}
