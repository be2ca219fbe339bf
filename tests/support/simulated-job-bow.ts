import type { LimbProfile, LimbStation } from '../../core/limb/limb-profile.ts';
import { type MeasuredBow, type MeasuredLimb, wholeBowOf } from '../../core/limb/modelled-bow.ts';
import { solveStaticBow } from '../../core/limb/static-bow.ts';
import { normal } from '../../demo-data/simulated/normal.ts';
import {
  type BowKind,
  drawIn,
  type SimulatedBow,
  segments,
  spreads,
  tillerOf,
} from '../../demo-data/simulated/simulated-bow.ts';
import { bambooPsi, glassPsi } from './sample-limbs.ts';

export const bowKinds: readonly BowKind[] = ['longbow', 'hybrid', 'recurve'];

/** Limbs of each kind, even between two values; inches. */
const ranges = {
  longbow: { length: [25, 28], fade: [1.15, 1.35], tip: [0.5, 0.6], reflex: [-0.5, 1], thick: 1 },
  hybrid: { length: [23, 25.5], fade: [1.3, 1.5], tip: [0.55, 0.65], reflex: [0.5, 2], thick: 1 },
  recurve: {
    length: [20, 23],
    fade: [1.6, 1.8],
    tip: [0.65, 0.8],
    reflex: [-0.5, 0.5],
    thick: 0.9,
  },
} as const;

type Random = () => number;
const between = (random: Random, [low, high]: readonly [number, number]) =>
  low + (high - low) * random();

interface Shape {
  limb: (thicker: number) => LimbProfile;
  braceIn: number;
  fadeIn: number;
  placesIn: number[];
}

function shapeOf(random: Random, kind: BowKind, contact: boolean): Shape {
  const { length, fade, tip, reflex, thick } = ranges[kind];
  const lengthIn = between(random, length);
  const [fadeWidthIn, tipWidthIn] = [between(random, fade), between(random, tip)];
  const fadeThick = thick * between(random, [0.38, 0.46]);
  const tipThick = thick * between(random, [0.26, 0.31]);
  const glassIn = between(random, [0.04, 0.05]);
  const recurveIn = kind !== 'recurve' ? 0 : between(random, contact ? [2.5, 4] : [0.5, 1.3]);
  const unstrung = {
    reflexIn: between(random, reflex),
    recurveIn,
    recurveFromIn: lengthIn * between(random, [0.6, 0.68]),
  };
  const placesIn = [0, 2, ...[0.2, 0.35, 0.5, 0.65, 0.8, 1].map((part) => part * lengthIn)];
  const middles = placesIn.slice(1).map((place, i) => (place + (placesIn[i] ?? 0)) / 2);
  const unevenness = new Map(
    middles.map((s) => [s, 1 + spreads.thicknessBetween * normal(random)]),
  );
  const moduli = {
    glassPsi: glassPsi * (1 + spreads.glassModulus * normal(random)),
    corePsi: bambooPsi * (1 + spreads.coreModulus * normal(random)),
  };
  const taper = (from: number, to: number, s: number) => from + ((to - from) * s) / lengthIn;
  const stationAt = (s: number, thicker: number): LimbStation => ({
    fromFadeIn: s,
    bellyWidthIn: taper(fadeWidthIn, tipWidthIn, s),
    backWidthIn: taper(fadeWidthIn, tipWidthIn, s),
    thicknessIn: taper(fadeThick, tipThick, s) * thicker * (unevenness.get(s) ?? 1),
  });
  const stations = [...placesIn, ...middles].sort((a, b) => a - b);
  return {
    braceIn: between(random, [7, 8]),
    fadeIn: between(random, [6.5, 8.5]),
    placesIn,
    limb: (thicker) => ({
      lengthIn,
      stations: stations.map((s) => stationAt(s, thicker)),
      layup: { bellyGlassIn: glassIn, backGlassIn: glassIn, ...moduli },
      edgeRadiusIn: 1 / 16,
      unstrung,
    }),
  };
}

function bowOf({ limb, fadeIn, braceIn }: Shape, lean: number): MeasuredBow {
  const half = (thicker: number): MeasuredLimb => ({
    fadeIn,
    fadeOffsetIn: -0.5,
    padDeg: 0,
    profile: limb(thicker),
  });
  return { upper: half(1 - lean), lower: half(1 + lean), braceIn };
}

/** The limbs one thicker and one thinner until the bow stands at a tiller; secant rule. */
function atTiller(shape: Shape, tillerIn: number): MeasuredBow | null {
  let [lean0, lean1] = [0, 0.004];
  let f0 = -tillerIn;
  for (let i = 0; i < 12; i += 1) {
    const found = tillerOf(bowOf(shape, lean1));
    if (found === null) return null;
    const f1 = found - tillerIn;
    if (Math.abs(f1) < 1e-4) return bowOf(shape, lean1);
    [lean0, lean1, f0] = [lean1, lean1 - (f1 * (lean1 - lean0)) / (f1 - f0), f1];
  }
  return null;
}

/** As calliper, tape and guess show it: bare, at the places only. */
function measure(random: Random, truth: MeasuredBow, placesIn: readonly number[]): MeasuredBow {
  const riserIn = (spreads.riserIn / 2) * normal(random);
  const half = (limb: MeasuredLimb): MeasuredLimb => {
    const { profile } = limb;
    const stations = profile.stations
      .filter(({ fromFadeIn }) => placesIn.includes(fromFadeIn))
      .map((station) => {
        const widthIn = station.bellyWidthIn + spreads.widthReadingIn * normal(random);
        return {
          fromFadeIn: station.fromFadeIn,
          bellyWidthIn: widthIn,
          backWidthIn: widthIn,
          thicknessIn: station.thicknessIn + spreads.thicknessReadingIn * normal(random),
        };
      });
    const layup = { ...profile.layup, glassPsi, corePsi: bambooPsi };
    return { ...limb, fadeIn: limb.fadeIn + riserIn, profile: { ...profile, stations, layup } };
  };
  return { ...truth, upper: half(truth.upper), lower: half(truth.lower) };
}

function contactOf(bow: MeasuredBow): { lbf: number; contact: boolean } | null {
  const options = { braceIn: bow.braceIn, drawsIn: [drawIn], segments };
  const solved = solveStaticBow(wholeBowOf(bow), options);
  if (solved.status !== 'converged') return null;
  const { brace, draws } = solved.value;
  return { lbf: draws[0]?.forceLbf ?? 0, contact: brace.upper.liftOffIn !== null };
}

/** One try; null where such a bow cannot be strung, or the string lies otherwise than asked. */
function tryBow(random: Random, kind: BowKind, contact: boolean): SimulatedBow | null {
  const shape = shapeOf(random, kind, contact);
  const targetTillerIn = between(random, [0, 3 / 16]);
  const truth = atTiller(shape, targetTillerIn + between(random, [-3 / 16, 3 / 16]));
  if (truth === null) return null;
  const found = contactOf(truth);
  if (found === null || found.contact !== contact) return null;
  const arrivalLbf = between(random, [40, 70]);
  return {
    kind,
    contact,
    truth,
    scale: arrivalLbf / found.lbf,
    measured: measure(random, truth, shape.placesIn),
    placesIn: shape.placesIn,
    arrivalLbf,
    targetTillerIn,
  };
}

/** A third each of longbow, hybrid and recurve, the string on the limb in half of the recurves. */
export function simulatedBow(random: Random): SimulatedBow {
  const kind = bowKinds[Math.floor(3 * random())] ?? 'longbow';
  const contact = kind === 'recurve' && random() < 0.5;
  for (;;) {
    const bow = tryBow(random, kind, contact);
    if (bow !== null) return bow;
  }
}
