import { decimal, inchFraction } from '../../../shared/measure.ts';
import type { PlanBow } from './bow.ts';
import type { PlanLimits } from './limits.ts';
import type { LimbWork } from './work.ts';

export type LimitName =
  | 'glass'
  | 'facing'
  | 'film'
  | 'width'
  | 'width-to-thickness'
  | 'side-stiffness'
  | 'steep-recurve'
  | 'total-drop'
  | 'nothing-to-take'
  | 'material';

/** One limit that a method breaks, with its figure, as one sentence. */
export interface Refusal {
  limit: LimitName;
  sentence: string;
}

/** Rounded down, so that a figure never reads as the limit it is under. */
const down = (value: number, digits: number) =>
  decimal(Math.floor(value * 10 ** digits) / 10 ** digits, digits);

/** Rounding of a solved amount must not look like a broken limit, relative. */
const slack = 1e-9;
const under = (value: number, least: number) => value < least * (1 - slack);

function glassRefusal(
  { made }: PlanBow,
  works: readonly LimbWork[],
  limits: PlanLimits,
): Refusal | null {
  let worst: { shortBy: number; sentence: string } | null = null;
  for (const { limb, before, finished } of works) {
    for (const face of ['belly', 'back'] as const) {
      const key = face === 'belly' ? 'bellyGlassIn' : 'backGlassIn';
      const [now, left] = [before.layup[key], finished.layup[key]];
      if (now === 0) continue;
      const madeIn = Math.max(made?.[key] ?? now, now);
      const byPart = limits.leastGlassPart * madeIn;
      const least = Math.max(limits.leastGlassIn, byPart);
      const shortBy = least - left;
      if (!under(left, least) || shortBy <= (worst?.shortBy ?? 0)) continue;
      const of =
        byPart > limits.leastGlassIn
          ? `${Math.round(100 * limits.leastGlassPart)} % of the ${decimal(madeIn, 3)} in it had when made`
          : 'the least glass that stays on';
      const sentence = `Glass: ${down(left, 3)} in would be left on the ${face} of the ${limb} limb, under ${decimal(least, 3)} in, ${of}.`;
      worst = { shortBy, sentence };
    }
  }
  return worst === null ? null : { limit: 'glass', sentence: worst.sentence };
}

/** One station of the work where width comes off. */
export interface CutStation {
  limb: LimbWork['limb'];
  fromFadeIn: number;
  oldWidthIn: number;
  /** Narrower face, inches. */
  widthIn: number;
  thicknessIn: number;
  /** New over old mean width, cubed. */
  sideStiffness: number;
}

/** Stations where more comes off than a calliper misses. Inches. */
export function cutStations(
  works: readonly LimbWork[],
  { smallestCutIn }: Pick<PlanLimits, 'smallestCutIn'>,
): CutStation[] {
  return works.flatMap(({ limb, sizes, finished }) =>
    finished.stations.flatMap((station) => {
      const old = sizes(station.fromFadeIn);
      const oldSum = old.bellyWidthIn + old.backWidthIn;
      const newSum = station.bellyWidthIn + station.backWidthIn;
      if ((oldSum - newSum) / 2 < smallestCutIn) return [];
      return [
        {
          limb,
          fromFadeIn: station.fromFadeIn,
          oldWidthIn: oldSum / 2,
          widthIn: Math.min(station.bellyWidthIn, station.backWidthIn),
          thicknessIn: station.thicknessIn,
          sideStiffness: (newSum / oldSum) ** 3,
        },
      ];
    }),
  );
}

const smallest = <Item>(items: readonly Item[], by: (item: Item) => number): Item | null =>
  items.reduce<Item | null>((least, one) => (least && by(least) <= by(one) ? least : one), null);

/** The cut station with the smallest of a measure, if there is one. */
export const narrowestOf = (cuts: readonly CutStation[]) => smallest(cuts, (cut) => cut.widthIn);
export const weakestOf = (cuts: readonly CutStation[]) =>
  smallest(cuts, (cut) => cut.sideStiffness);

/** Cut stations where width over thickness counts. */
function ratioStations(
  works: readonly LimbWork[],
  cuts: readonly CutStation[],
  limits: PlanLimits,
) {
  return cuts.filter(({ limb, fromFadeIn }) => {
    const length = works.find((work) => work.limb === limb)?.before.lengthIn ?? 0;
    return fromFadeIn >= limits.ratioFromFadeIn && fromFadeIn <= length - limits.ratioShortOfNockIn;
  });
}

const place = ({ limb, fromFadeIn }: CutStation) =>
  `${decimal(fromFadeIn, 1)} in from the fade of the ${limb} limb`;

function widthRefusals(bow: PlanBow, works: readonly LimbWork[], limits: PlanLimits): Refusal[] {
  const { kind } = bow;
  const cuts = cutStations(works, limits);
  const found: Refusal[] = [];
  const narrow = narrowestOf(cuts);
  const leastWidth = limits.leastWidthIn[kind];
  if (narrow && under(narrow.widthIn, leastWidth)) {
    const sentence = `Width: ${down(narrow.widthIn, 3)} in would be left ${place(narrow)}, under the ${inchFraction(leastWidth, 64)} in of a ${kind}.`;
    found.push({ limit: 'width', sentence });
  }
  const flat = smallest(ratioStations(works, cuts, limits), (cut) => cut.widthIn / cut.thicknessIn);
  const leastRatio = limits.leastWidthToThickness[kind];
  if (flat && under(flat.widthIn / flat.thicknessIn, leastRatio)) {
    const ratio = down(flat.widthIn / flat.thicknessIn, 2);
    const sentence = `Width to thickness: ${ratio} would be left ${place(flat)}, under the ${decimal(leastRatio, 1)} of a ${kind}.`;
    found.push({ limit: 'width-to-thickness', sentence });
  }
  const weak = weakestOf(cuts);
  const leastSide = limits.leastSideStiffness[kind];
  if (weak && under(weak.sideStiffness, leastSide)) {
    const sentence = `Side stiffness: ${Math.floor(100 * weak.sideStiffness)} % would be left ${place(weak)}, under the ${Math.round(100 * leastSide)} % of a ${kind}.`;
    found.push({ limit: 'side-stiffness', sentence });
  }
  return found;
}

/** Limits on sizes that the work, with the finishing after it, breaks; each named once, at its worst. */
export function sizeRefusals(
  bow: PlanBow,
  works: readonly LimbWork[],
  limits: PlanLimits,
): Refusal[] {
  const glass = glassRefusal(bow, works, limits);
  return [...(glass ? [glass] : []), ...widthRefusals(bow, works, limits)];
}
