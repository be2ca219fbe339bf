import { refuseField } from '../../shared/errors.ts';
import type { LimbCurve } from './curve.ts';
import { monotoneCubic } from './monotone-cubic.ts';
import { type Layer, sectionStiffness } from './section.ts';
import { type CutFace, type SideCut, totalCut } from './side-cut.ts';

/** A limb measured square to its length at one place, bare. Inches. */
export interface LimbStation {
  fromFadeIn: number;
  bellyWidthIn: number;
  backWidthIn: number;
  /** Over everything, glass included. */
  thicknessIn: number;
}

/** What the limb is made of, from belly to back. An all-wood limb has faces of no thickness. */
export interface Layup {
  bellyGlassIn: number;
  backGlassIn: number;
  glassPsi: number;
  corePsi: number;
}

/** How the unstrung limb lies, inches; both are zero on a straight limb. */
export interface UnstrungShape {
  /** Tip away from the archer by an even curve from the fade. Negative: towards the archer. */
  reflexIn: number;
  /** Tip further away by a hook over the outer part. */
  recurveIn: number;
  /** Where the hook begins, from the fade. */
  recurveFromIn: number;
}

/** What was cut off the sides since the limb was measured. */
export interface CutSince {
  before: LimbProfile;
  cuts: readonly SideCut[];
  face: CutFace;
}

export interface LimbProfile {
  /** Fade to nock along the limb, inches. */
  lengthIn: number;
  /** At least three, rising, inside the limb. */
  stations: readonly LimbStation[];
  /** Absent on a limb as measured. With it, the edges between the stations are those of the cut. */
  cut?: CutSince;
  layup: Layup;
  edgeRadiusIn: number;
  unstrung: UnstrungShape;
}

const positive = (value: number) => Number.isFinite(value) && value > 0;

function refuseOddStations({ stations, lengthIn, layup }: LimbProfile): void {
  if (stations.length < 3) refuseField('stations', 'A limb needs at least three measured places.');
  for (const [i, station] of stations.entries()) {
    const place = `${station.fromFadeIn} in from the fade`;
    const before = stations[i - 1];
    if (before !== undefined && !(station.fromFadeIn > before.fromFadeIn)) {
      refuseField(
        'stations',
        `The places are out of order: ${place} follows ${before.fromFadeIn} in.`,
      );
    }
    if (!(station.fromFadeIn >= 0 && station.fromFadeIn <= lengthIn)) {
      refuseField('stations', `A place ${place} lies outside the limb of ${lengthIn} in.`);
    }
    if (!positive(station.bellyWidthIn) || !positive(station.backWidthIn)) {
      refuseField('stations', `The width ${place} must be more than 0 in.`);
    }
    if (!(station.thicknessIn > layup.bellyGlassIn + layup.backGlassIn)) {
      refuseField(
        'stations',
        `The limb ${place} is no thicker than its glass: nothing is left for a core.`,
      );
    }
  }
}

/** @throws ShopError BAD_INPUT, one sentence naming what is out of order, zero or negative. */
export function refuseOddProfile(profile: LimbProfile): void {
  const { lengthIn, layup, edgeRadiusIn, unstrung } = profile;
  if (!positive(lengthIn)) refuseField('lengthIn', 'The limb must be longer than 0 in.');
  if (!(layup.bellyGlassIn >= 0 && layup.backGlassIn >= 0)) {
    refuseField('layup', 'Glass cannot be thinner than nothing.');
  }
  if (!positive(layup.corePsi) || !positive(layup.glassPsi)) {
    refuseField('layup', 'Core and glass need a modulus over 0 psi.');
  }
  if (!(edgeRadiusIn >= 0)) refuseField('edgeRadiusIn', 'An edge radius cannot be negative.');
  if (!(unstrung.recurveIn >= 0))
    refuseField('unstrung', 'The depth of a recurve cannot be negative.');
  if (unstrung.recurveIn > 0 && !(unstrung.recurveFromIn < lengthIn)) {
    refuseField('unstrung', 'The recurve must begin before the tip.');
  }
  refuseOddStations(profile);
}

/** The layers of a limb of this thickness, from belly to back. */
export function layersOf(
  { bellyGlassIn, backGlassIn, glassPsi, corePsi }: Layup,
  thicknessIn: number,
): Layer[] {
  const core = { thicknessIn: thicknessIn - bellyGlassIn - backGlassIn, modulusPsi: corePsi };
  const layers: Layer[] = [core];
  if (bellyGlassIn > 0) layers.unshift({ thicknessIn: bellyGlassIn, modulusPsi: glassPsi });
  if (backGlassIn > 0) layers.push({ thicknessIn: backGlassIn, modulusPsi: glassPsi });
  return layers;
}

interface Curves {
  belly(fromFadeIn: number): number;
  back(fromFadeIn: number): number;
  thickness(fromFadeIn: number): number;
}

/**
 * A new edge is the old one less the cut. A curve through the new widths alone would swing past
 * both where a cut begins and ends, by a hundredth of an inch at the fade.
 */
function curvesOf({ stations, cut }: LimbProfile): Curves {
  // Nothing is known past the outermost places; their sizes are kept.
  const through = (size: (station: LimbStation) => number) => {
    const curve = monotoneCubic(stations.map((one) => ({ x: one.fromFadeIn, y: size(one) })));
    return (s: number) => curve.at(Math.min(Math.max(s, curve.fromX), curve.toX));
  };
  const thickness = through((station) => station.thicknessIn);
  if (cut === undefined) {
    const belly = through((station) => station.bellyWidthIn);
    return { belly, back: through((station) => station.backWidthIn), thickness };
  }
  const { belly, back } = curvesOf(cut.before);
  const off = totalCut(cut.cuts);
  return {
    belly: cut.face === 'back' ? belly : (s) => belly(s) - off(s),
    back: cut.face === 'belly' ? back : (s) => back(s) - off(s),
    thickness,
  };
}

/** Sizes of the limb anywhere between fade and tip, smooth through the stations. */
export function sizesOf(profile: LimbProfile): (fromFadeIn: number) => LimbStation {
  const { belly, back, thickness } = curvesOf(profile);
  return (fromFadeIn) => ({
    fromFadeIn,
    bellyWidthIn: belly(fromFadeIn),
    backWidthIn: back(fromFadeIn),
    thicknessIn: thickness(fromFadeIn),
  });
}

/**
 * Curvature of the unstrung limb, 1/in. An even curve of curvature k puts the tip k L^2 / 2 out of
 * line; a hook whose curvature grows evenly from nothing over a length l, c l^3 / 6 (both for
 * small angles).
 */
function curvatureOf({ lengthIn, unstrung }: LimbProfile): (fromFadeIn: number) => number {
  const { reflexIn, recurveIn, recurveFromIn } = unstrung;
  const even = (-2 * reflexIn) / lengthIn ** 2;
  const hook = recurveIn === 0 ? 0 : (-6 * recurveIn) / (lengthIn - recurveFromIn) ** 3;
  return (s) => even + (s > recurveFromIn ? hook * (s - recurveFromIn) : 0);
}

/** Stiffness is worked out at this many places between two breaks and read off between them. */
const placesBetween = 4;

/**
 * The limb as the mechanics sees it: its stiffness by the transformed section at every place, its
 * unstrung curvature, and breaks at the stations and where the recurve begins.
 * @throws ShopError BAD_INPUT, one sentence naming what is out of order, zero or negative
 */
export function limbCurve(profile: LimbProfile): LimbCurve {
  refuseOddProfile(profile);
  const { lengthIn, layup, edgeRadiusIn, unstrung } = profile;
  const sizes = sizesOf(profile);
  const stiffnessAt = (s: number) => {
    const { bellyWidthIn, backWidthIn, thicknessIn } = sizes(s);
    const layers = layersOf(layup, thicknessIn);
    return sectionStiffness({ layers, bellyWidthIn, backWidthIn, edgeRadiusIn }).eiLbfIn2;
  };
  const inner = profile.stations.map((station) => station.fromFadeIn);
  if (unstrung.recurveIn > 0) inner.push(unstrung.recurveFromIn);
  const breaksIn = [...new Set([0, ...inner, lengthIn])].sort((a, b) => a - b);
  const places = breaksIn.flatMap((from, i) => {
    const to = breaksIn[i + 1];
    if (to === undefined) return [from];
    return Array.from(
      { length: placesBetween },
      (_, k) => from + ((to - from) * k) / placesBetween,
    );
  });
  const ei = monotoneCubic(places.map((x) => ({ x, y: stiffnessAt(x) })));
  return { lengthIn, breaksIn, eiAt: (s) => ei.at(s), curvatureAt: curvatureOf(profile) };
}
