import type { Limb } from '../../shared/bows.ts';
import { refuseField } from '../../shared/errors.ts';
import { decimal, difference, inchFraction } from '../../shared/measure.ts';
import { type MonotoneCubic, monotoneCubic } from './monotone-cubic.ts';

/** The face that the template is laid on. */
export type TemplateFace = 'back' | 'belly';
export const templateSides = ['left', 'right'] as const;
export type TemplateSide = (typeof templateSides)[number];

/** Both sides of a limb, inches from the true centre. */
export type HalfWidths = Record<TemplateSide, number>;

/** One station. True centre is the line of the braced string, not half the width. */
export interface TemplateStation {
  /** Along the limb, inches. */
  fromFadeIn: number;
  presentIn: HalfWidths;
  newIn: HalfWidths;
}

export interface TemplateLimb {
  limb: Limb;
  /** Left and right are as seen on this face with the tip pointing up. */
  face: TemplateFace;
  /** From the fade outwards; the outline runs from the first to the last. */
  stations: readonly TemplateStation[];
}

export interface TemplateOptions {
  /** Spacing of the outline's points, inches. */
  everyIn?: number;
  /** Cuts blend out this far from the fade, inches (common practice: 2 to 3 in). */
  blendIn?: number;
  /** Nearer the fade no more than this may come off a side, inches. */
  largestStepIn?: number;
}

/** Edges on one side at one place, inches from the true centre. */
export interface EdgePoint {
  presentIn: number;
  newIn: number;
  offIn: number;
}

export interface OutlinePoint {
  fromFadeIn: number;
  left: EdgePoint;
  right: EdgePoint;
  /** Off both sides together, inches. */
  offTotalIn: number;
}

/** A length in inches with its text: three decimals, and the nearest 1/64 as a rule is read. */
export interface TemplateFigure {
  valueIn: number;
  decimalText: string;
  fractionText: string;
}

export interface SideFigures {
  present: TemplateFigure;
  new: TemplateFigure;
  off: TemplateFigure;
}

/** What is written at a station line. Each fraction is rounded by itself, so they may not add up. */
export interface StationFigures {
  fromFadeIn: number;
  left: SideFigures;
  right: SideFigures;
  presentWidth: TemplateFigure;
  newWidth: TemplateFigure;
  offTotal: TemplateFigure;
}

export interface Template {
  limb: Limb;
  face: TemplateFace;
  /** At every step from the first station, at every station and at the last; rising. */
  outline: OutlinePoint[];
  stations: StationFigures[];
}

const longestLimbIn = 60;

const placeText = (fromFadeIn: number) => `${decimal(fromFadeIn, 4)}" from the fade`;

const cutIn = ({ presentIn, newIn }: TemplateStation, side: TemplateSide) =>
  difference(presentIn[side], newIn[side]);

function refuseOddStation(limb: Limb, station: TemplateStation): void {
  if (!(station.fromFadeIn >= 0 && station.fromFadeIn <= longestLimbIn)) {
    const range = `between 0 and ${longestLimbIn} in from the fade`;
    refuseField('fromFadeIn', `Every station of the ${limb} limb must lie ${range}.`);
  }
  for (const side of templateSides) {
    const where = `The ${limb} limb, ${side} side, ${placeText(station.fromFadeIn)}`;
    const [present, next] = [station.presentIn[side], station.newIn[side]];
    if (![present, next].every((width) => width > 0 && Number.isFinite(width))) {
      refuseField(side, `${where}: both half-widths must be over 0 in.`);
    }
    if (cutIn(station, side) < 0) {
      refuseField(
        side,
        `${where}: the new edge lies outside the present one; narrowing cannot add width.`,
      );
    }
  }
}

function refuseOddOptions({ everyIn, blendIn, largestStepIn }: Required<TemplateOptions>): void {
  if (!(everyIn >= 1 / 64 && everyIn <= 2)) {
    refuseField('everyIn', 'The outline needs a point every 1/64 to 2 in.');
  }
  if (!(blendIn >= 0 && Number.isFinite(blendIn))) {
    refuseField('blendIn', 'Give how far from the fade the cuts blend out, 0 in or more.');
  }
  if (!(largestStepIn >= 0 && Number.isFinite(largestStepIn))) {
    refuseField('largestStepIn', 'Give how large a step at the fade may be, 0 in or more.');
  }
}

/** The outline begins at its first station: a cut must have run out there, and near the fade. */
function refuseStepAtFade(
  { limb, stations }: TemplateLimb,
  { blendIn, largestStepIn }: Required<TemplateOptions>,
): void {
  for (const [i, station] of stations.entries()) {
    if (i > 0 && station.fromFadeIn >= blendIn) return;
    for (const side of templateSides) {
      const off = cutIn(station, side);
      if (off <= largestStepIn) continue;
      const what = `${decimal(off, 3)}" off the ${side} side of the ${limb} limb`;
      const rule = `let the cut run out to ${decimal(largestStepIn, 3)}" or less there`;
      refuseField(side, `${what} ${placeText(station.fromFadeIn)} leaves a step: ${rule}.`);
    }
  }
}

function refuseOddLimb(limb: TemplateLimb, options: Required<TemplateOptions>): void {
  refuseOddOptions(options);
  const { stations } = limb;
  if (stations.length < 2)
    refuseField('stations', `The ${limb.limb} limb needs two stations at least.`);
  for (const [i, station] of stations.entries()) {
    refuseOddStation(limb.limb, station);
    const before = stations[i - 1];
    if (before !== undefined && !(station.fromFadeIn > before.fromFadeIn)) {
      const places = `${placeText(station.fromFadeIn)} follows ${placeText(before.fromFadeIn)}`;
      refuseField('stations', `Stations of the ${limb.limb} limb are out of order: ${places}.`);
    }
  }
  refuseStepAtFade(limb, options);
}

/** Present and new edge of one side anywhere along the limb. */
function edgesOf(stations: readonly TemplateStation[], side: TemplateSide) {
  const curve = (which: 'presentIn' | 'newIn'): MonotoneCubic =>
    monotoneCubic(stations.map((one) => ({ x: one.fromFadeIn, y: one[which][side] })));
  const [present, next] = [curve('presentIn'), curve('newIn')];
  return (fromFadeIn: number): EdgePoint => {
    const after = stations.findIndex((one) => one.fromFadeIn >= fromFadeIn);
    const ends = [stations[Math.max(after - 1, 0)], stations[after]];
    const uncut = ends.every((one) => one !== undefined && cutIn(one, side) === 0);
    const presentIn = present.at(fromFadeIn);
    // Between two uncut stations nothing comes off, whatever the next stretch does to the curve;
    // and two curves that nearly touch may cross by a hair, but no cut adds width.
    const newIn = uncut ? presentIn : Math.min(next.at(fromFadeIn), presentIn);
    return { presentIn, newIn, offIn: presentIn - newIn };
  };
}

/** Every step from the first station, with the stations themselves. */
function placesOf(stations: readonly TemplateStation[], everyIn: number): number[] {
  const at = stations.map(({ fromFadeIn }) => fromFadeIn);
  const [from, to] = [at[0] ?? 0, at.at(-1) ?? 0];
  const steps = Array.from(
    { length: Math.floor((to - from) / everyIn) + 1 },
    (_, i) => from + i * everyIn,
  );
  // A step within a millionth of a station is that station.
  const free = steps.filter((x) => at.every((station) => Math.abs(station - x) > 1e-6));
  return [...free, ...at].sort((a, b) => a - b);
}

function figure(valueIn: number): TemplateFigure {
  return {
    valueIn,
    decimalText: decimal(valueIn, 3),
    fractionText: inchFraction(valueIn, 64),
  };
}

function figuresOf(station: TemplateStation): StationFigures {
  const { presentIn, newIn } = station;
  const side = (which: TemplateSide): SideFigures => ({
    present: figure(presentIn[which]),
    new: figure(newIn[which]),
    off: figure(cutIn(station, which)),
  });
  return {
    fromFadeIn: station.fromFadeIn,
    left: side('left'),
    right: side('right'),
    presentWidth: figure(presentIn.left + presentIn.right),
    newWidth: figure(newIn.left + newIn.right),
    offTotal: figure(cutIn(station, 'left') + cutIn(station, 'right')),
  };
}

/**
 * What a 1:1 marking-out template of one limb shows: the present and the new edge on both sides of
 * the true centre, as smooth outlines through the stations and as figures at each station. Between
 * two stations an edge rises, falls or stays level as they do (see `monotoneCubic`); no cut is
 * shown between two stations where nothing comes off. All lengths in inches.
 *
 * Defaults: a point every 1/8 in; no more than 1/64 in off a side nearer than 2 in to the fade, nor
 * where the outline begins (common practice).
 * @throws ShopError BAD_INPUT naming limb, side and place: stations out of order or fewer than two,
 * a half-width not over 0, a new edge outside the present one, a cut that does not blend out
 */
export function templateOffsets(limb: TemplateLimb, options: TemplateOptions = {}): Template {
  const { everyIn = 1 / 8, blendIn = 2, largestStepIn = 1 / 64 } = options;
  refuseOddLimb(limb, { everyIn, blendIn, largestStepIn });
  const { stations } = limb;
  const [leftAt, rightAt] = [edgesOf(stations, 'left'), edgesOf(stations, 'right')];
  const outline = placesOf(stations, everyIn).map((fromFadeIn) => {
    const [left, right] = [leftAt(fromFadeIn), rightAt(fromFadeIn)];
    return { fromFadeIn, left, right, offTotalIn: left.offIn + right.offIn };
  });
  return { limb: limb.limb, face: limb.face, outline, stations: stations.map(figuresOf) };
}

/** The same limb as seen on its other face: left and right change places. */
export function turnedOver({ limb, face, stations }: TemplateLimb): TemplateLimb {
  const swapped = ({ left, right }: HalfWidths): HalfWidths => ({ left: right, right: left });
  return {
    limb,
    face: face === 'back' ? 'belly' : 'back',
    stations: stations.map(({ fromFadeIn, presentIn, newIn }) => ({
      fromFadeIn,
      presentIn: swapped(presentIn),
      newIn: swapped(newIn),
    })),
  };
}
