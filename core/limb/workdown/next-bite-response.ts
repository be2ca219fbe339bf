import { ShopError } from '../../../shared/errors.ts';
import { type LimbStation, sizesOf } from '../limb-profile.ts';
import { type MeasuredBow, type MeasuredLimb, wholeBowOf } from '../modelled-bow.ts';
import { type BowRemoval, bowAfter } from '../predict-removal.ts';
import { type LimbRemoval, nothingTaken } from '../removal.ts';
import type { CutFace } from '../side-cut.ts';
import { converged, type Solved } from '../solved.ts';
import { solveStaticBow } from '../static-bow.ts';

/** What a unit taken off does: to the logarithm of the weight (positive: lighter) and to tiller. */
export interface Effect {
  drop: number;
  /** Change of upper minus lower, inches; see `braceTiller`. */
  tillerIn: number;
}

/** A place that is cut, its width now, and what an inch of total width off it does. */
export interface StationEffect {
  fromFadeIn: number;
  /** The narrower face, inches. */
  widthIn: number;
  perIn: Effect;
}

export interface LimbResponse {
  stations: readonly StationEffect[];
  /** A thousandth off both faces over the whole limb. */
  perThouBothFaces: Effect;
  /** A thousandth off the belly alone. */
  perThouBelly: Effect;
}

/** How a bow answers to small removals: the slopes of the model at the bow as it was measured. */
export interface BowResponse {
  face: CutFace;
  upper: LimbResponse;
  lower: LimbResponse;
  modelledLbf: number;
  modelledTillerIn: number;
}

export interface ResponseOptions {
  /** AMO draw that the weight belongs to, inches. */
  drawIn: number;
  /** Places to cut, inches from the fade, rising; two at least. */
  placesIn: { upper: readonly number[]; lower: readonly number[] };
  face?: CutFace;
  segments?: number;
}

/** Small enough for a slope, large enough to stand clear of the solver's residual. */
const trialCutIn = 0.01;
const trialThou = 0.5;

function trialCut(placesIn: readonly number[], index: number, face: CutFace): LimbRemoval {
  const cuts = placesIn.map((fromFadeIn, i) => {
    const sideIn = i === index ? trialCutIn / 2 : 0;
    return { fromFadeIn, leftIn: sideIn, rightIn: sideIn };
  });
  return { ...nothingTaken, face, cuts };
}

/** What a modelled bow weighs, and how it stands at brace. */
export interface WeightAndTiller {
  lbf: number;
  /** Upper minus lower at the fades, inches; see `braceTiller`. */
  tillerIn: number;
}

type Converged<Value> = Extract<Solved<Value>, { status: 'converged' }>;

/** Both fades to one string line that slopes by an angle, upper minus lower, inches. */
function tillerAtFades({ upper, lower }: MeasuredBow, tiltRad: number): number {
  return (
    (lower.fadeOffsetIn - upper.fadeOffsetIn) * Math.cos(tiltRad) -
    (upper.fadeIn + lower.fadeIn) * Math.sin(tiltRad)
  );
}

/**
 * Weight and tiller of a bow from one solve. The moduli are guesses, so only ratios of two such
 * weights are to be trusted.
 * @param drawIn AMO, inches
 * @throws ShopError BAD_INPUT for what the profile or the solver refuses
 */
export function weightAndTiller(
  bow: MeasuredBow,
  drawIn: number,
  segments: number,
): Solved<WeightAndTiller> {
  const { braceIn } = bow;
  const drawn = solveStaticBow(wholeBowOf(bow), { braceIn, drawsIn: [drawIn], segments });
  if (drawn.status !== 'converged') return drawn;
  const lbf = drawn.value.draws[0]?.forceLbf ?? Number.NaN;
  const tillerIn = tillerAtFades(bow, drawn.value.brace.tiltRad);
  return converged({ lbf, tillerIn }, drawn.residual, drawn.iterations);
}

const narrower = ({ bellyWidthIn, backWidthIn }: LimbStation) =>
  Math.min(bellyWidthIn, backWidthIn);

/** Keeps the account of many solves: what each removal changes, and whether one had no answer. */
class Differences {
  residual: number;
  iterations: number;
  miss: Solved<never> | null = null;
  readonly #after: (removal: BowRemoval) => Solved<WeightAndTiller>;
  readonly #before: WeightAndTiller;

  constructor(
    before: Converged<WeightAndTiller>,
    after: (removal: BowRemoval) => Solved<WeightAndTiller>,
  ) {
    this.residual = before.residual;
    this.iterations = before.iterations;
    this.#before = before.value;
    this.#after = after;
  }

  per(amount: number, removal: BowRemoval): Effect {
    const after = this.#after(removal);
    if (after.status !== 'converged') {
      this.miss ??= after;
      return { drop: 0, tillerIn: 0 };
    }
    this.residual = Math.max(this.residual, after.residual);
    this.iterations += after.iterations;
    return {
      drop: Math.log(this.#before.lbf / after.value.lbf) / amount,
      tillerIn: (after.value.tillerIn - this.#before.tillerIn) / amount,
    };
  }
}

function limbResponse(
  { profile }: MeasuredLimb,
  placesIn: readonly number[],
  face: CutFace,
  per: (amount: number, removal: LimbRemoval) => Effect,
): LimbResponse {
  const sizes = sizesOf(profile);
  const [bellyThou, backThou] = [trialThou, trialThou];
  return {
    stations: placesIn.map((fromFadeIn, i) => ({
      fromFadeIn,
      widthIn: narrower(sizes(fromFadeIn)),
      perIn: per(trialCutIn, trialCut(placesIn, i, face)),
    })),
    perThouBothFaces: per(trialThou, { ...nothingTaken, bellyThou, backThou }),
    perThouBelly: per(trialThou, { ...nothingTaken, bellyThou }),
  };
}

/**
 * Slopes of weight and tiller for every place of both limbs and for their faces, by differences
 * of the model, one solve each.
 * @returns not converged or infeasible, with a sentence, where the model has no answer
 * @throws ShopError BAD_INPUT for fewer than two places on a limb, or what the profile refuses
 */
export function bowResponse(bow: MeasuredBow, options: ResponseOptions): Solved<BowResponse> {
  const { drawIn, placesIn, face = 'both', segments = 30 } = options;
  for (const name of ['upper', 'lower'] as const) {
    if (placesIn[name].length >= 2) continue;
    const sentence = `Give two places at least to cut the ${name} limb at.`;
    throw new ShopError('BAD_INPUT', sentence, { placesIn: sentence });
  }
  const before = weightAndTiller(bow, drawIn, segments);
  if (before.status !== 'converged') return before;
  const differences = new Differences(before, (removal) =>
    weightAndTiller(bowAfter(bow, removal), drawIn, segments),
  );
  const upper = limbResponse(bow.upper, placesIn.upper, face, (amount, removal) =>
    differences.per(amount, { upper: removal, lower: nothingTaken }),
  );
  const lower = limbResponse(bow.lower, placesIn.lower, face, (amount, removal) =>
    differences.per(amount, { upper: nothingTaken, lower: removal }),
  );
  if (differences.miss !== null) return differences.miss;
  const { lbf: modelledLbf, tillerIn: modelledTillerIn } = before.value;
  const { residual, iterations } = differences;
  return converged({ face, upper, lower, modelledLbf, modelledTillerIn }, residual, iterations);
}

/**
 * The same slopes with the widths as they are now. A stiffness goes with its width, so the drop an
 * inch takes grows as the width shrinks; the shapes of the limbs change little during one job.
 * @param widthsIn of the same places, inches
 */
export function withWidths(
  response: BowResponse,
  widthsIn: { upper: readonly number[]; lower: readonly number[] },
): BowResponse {
  const limb = (name: 'upper' | 'lower'): LimbResponse => ({
    ...response[name],
    stations: response[name].stations.map((station, i) => {
      const widthIn = widthsIn[name][i] ?? station.widthIn;
      const grown = station.widthIn / widthIn;
      const { drop, tillerIn } = station.perIn;
      return { ...station, widthIn, perIn: { drop: drop * grown, tillerIn: tillerIn * grown } };
    }),
  });
  return { ...response, upper: limb('upper'), lower: limb('lower') };
}
