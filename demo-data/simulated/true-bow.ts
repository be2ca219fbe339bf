import { type MeasuredBow, type MeasuredLimb, sizesOf } from '../../core/limb/index.ts';
import { weightAndTiller } from '../../core/limb/workdown/next-bite-response.ts';
import { type BowKind, drawIn, type SimulatedBow, segments, tillerOf } from './simulated-bow.ts';

/** A limb with a station at every place, its core softer or stiffer than anybody knows. */
function trueLimb(limb: MeasuredLimb, placesIn: readonly number[], thicker: number): MeasuredLimb {
  const { profile } = limb;
  const sizes = sizesOf(profile);
  const known = profile.stations.map(({ fromFadeIn }) => fromFadeIn);
  const places = [...new Set([...known, ...placesIn])].sort((a, b) => a - b);
  const stations = places.map((fromFadeIn) => {
    const at = sizes(fromFadeIn);
    return { ...at, fromFadeIn, thicknessIn: at.thicknessIn * thicker };
  });
  const { corePsi, glassPsi } = profile.layup;
  const layup = { ...profile.layup, corePsi: 1.1 * corePsi, glassPsi: 0.95 * glassPsi };
  return { ...limb, profile: { ...profile, stations, layup } };
}

function leaning(measured: MeasuredBow, placesIn: readonly number[], lean: number): MeasuredBow {
  return {
    ...measured,
    upper: trueLimb(measured.upper, placesIn, 1 - lean),
    lower: trueLimb(measured.lower, placesIn, 1 + lean),
  };
}

/** The bow behind the plan's figures: it stands at a tiller, and weighs what it weighs. */
export function trueBow(
  measured: MeasuredBow,
  placesIn: readonly number[],
  at: { tillerIn: number; lbf: number },
  kind: BowKind = 'longbow',
): SimulatedBow {
  let [lean0, lean1] = [0, 0.004];
  let f0 = (tillerOf(leaning(measured, placesIn, 0)) ?? 0) - at.tillerIn;
  for (let i = 0; i < 8; i += 1) {
    const f1 = (tillerOf(leaning(measured, placesIn, lean1)) ?? 0) - at.tillerIn;
    if (Math.abs(f1) < 1e-3) break;
    [lean0, lean1, f0] = [lean1, lean1 - (f1 * (lean1 - lean0)) / (f1 - f0), f1];
  }
  const truth = leaning(measured, placesIn, lean1);
  const solved = weightAndTiller(truth, drawIn, segments);
  if (solved.status !== 'converged') throw new Error(solved.why);
  return {
    kind,
    contact: false,
    truth,
    scale: at.lbf / solved.value.lbf,
    measured,
    placesIn,
    arrivalLbf: at.lbf,
    targetTillerIn: at.tillerIn,
  };
}
