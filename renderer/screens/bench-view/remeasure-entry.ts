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

/** A face that was thinned. Measuring it again by loupe is offered, not asked for. */
export interface CutFace {
  limb: Limb;
  face: 'back' | 'belly';
  /** What was meant to come off, thousandths of an inch. */
  plannedThou: number;
}

/**
 * Widths as they were given, by place, and what came off the faces; a place that is missing was
 * not measured yet, a face that is null counts as it was meant.
 */
export const remeasureEntry = z.strictObject({
  widthsIn: z.record(z.string().max(40), z.number().min(0.05).max(4)),
  facesThou: z.record(z.string().max(40), z.number().min(0).max(40).nullable()),
  isReading: z.boolean(),
  /** The place that waits where somebody went back to it. */
  at: z.string().max(40).nullable(),
});
export type RemeasureEntry = z.infer<typeof remeasureEntry>;

export const placeKey = ({ limb, fromFadeIn }: Pick<CutPlace, 'limb' | 'fromFadeIn'>): string =>
  `${limb} ${fromFadeIn}`;

export const faceKey = ({ limb, face }: Pick<CutFace, 'limb' | 'face'>): string =>
  `${limb} ${face}`;

export const freshRemeasure: RemeasureEntry = {
  widthsIn: {},
  facesThou: {},
  isReading: false,
  at: null,
};

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

/** The face that waits, or null once each was measured or let stand. */
export function waitingFace(faces: readonly CutFace[], entry: RemeasureEntry): CutFace | null {
  return (
    faces.find((face) => faceKey(face) === entry.at) ??
    faces.find((face) => entry.facesThou[faceKey(face)] === undefined) ??
    null
  );
}

/** What came off a face, or null: it counts as it was meant. */
export function withFace(
  entry: RemeasureEntry,
  face: CutFace,
  thou: number | null,
): RemeasureEntry {
  return { ...entry, at: null, facesThou: { ...entry.facesThou, [faceKey(face)]: thou } };
}

/** `Upper limb, belly` */
export const faceText = ({ limb, face }: Pick<CutFace, 'limb' | 'face'>): string =>
  `${limbWord(limb)} limb, ${face}`;

/** What is saved, read back: how much was measured and how much counts as it was meant. */
export function remeasureSaid(
  places: readonly CutPlace[],
  faces: readonly CutFace[],
  entry: RemeasureEntry,
): string {
  const measured = faces.filter((face) => entry.facesThou[faceKey(face)] != null).length;
  const widths = places.length === 1 ? '1 width' : `${places.length} widths`;
  const said = [
    ...(places.length === 0 ? [] : [`${widths} re-measured.`]),
    ...(measured === 0 ? [] : [`${measured} of ${faces.length} faces measured.`]),
    ...(measured === faces.length ? [] : ['What was not measured counts as it was meant.']),
  ];
  return said.join(' ');
}

/** A width that grew, or lost far more than was meant, was probably read wrong; otherwise null. */
export function widthTrouble(place: CutPlace, widthIn: number): string | null {
  const grewIn = widthIn - place.beforeIn;
  if (grewIn > 0.003) return `Wider than before the cut (${place.beforeIn.toFixed(3)} in).`;
  const missIn = place.expectedIn - widthIn;
  if (missIn > 1 / 32) return `Much narrower than wanted (${place.expectedIn.toFixed(3)} in).`;
  return null;
}

/** An entry as it is written: widths of all places, and the faces that were measured. */
export function remeasured(
  {
    removalId,
    rowVersion,
    places,
    faces,
  }: {
    removalId: string;
    rowVersion: number;
    places: readonly CutPlace[];
    faces: readonly CutFace[];
  },
  { widthsIn, facesThou }: RemeasureEntry,
) {
  return {
    removalId,
    rowVersion,
    widths: places.flatMap((place) => {
      const widthIn = widthsIn[placeKey(place)];
      const { limb, fromFadeIn } = place;
      return widthIn === undefined ? [] : [{ limb, fromFadeIn, widthIn }];
    }),
    faces: faces.flatMap(({ limb, face }) => {
      const thou = facesThou[faceKey({ limb, face })] ?? null;
      return thou === null ? [] : [{ limb, face, thou }];
    }),
  };
}
