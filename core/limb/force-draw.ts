import { refuseField } from '../../shared/errors.ts';
import { decimal } from '../../shared/measure.ts';
import { amoAtNock } from './draw-length.ts';
import { type ForceReading, inches, longestDrawIn, readingsInOrder } from './force-readings.ts';
import { type Knot, type MonotoneCubic, monotoneCubic } from './monotone-cubic.ts';

/** Weight of a modelled bow at an AMO draw, lbf. */
export type ModelledForce = (drawIn: number) => number;

export interface ForceDrawOptions {
  /** Throat to string, inches. With it the curve starts from 0 lb at brace height + 1 3/4 in AMO. */
  braceIn?: number | null;
  /** No weight is answered past it, inches AMO; null where it is unknown. */
  maxSafeDrawIn?: number | null;
  /** Lends its shape to one lone reading; asked from brace, else from 1 in before the reading. */
  modelledForceAt?: ModelledForce | null;
}

/** Where the shape between the readings comes from. */
export type ForceDrawBasis = 'monotone cubic' | 'straight line' | 'model' | 'one reading';

export interface WeightAnswer {
  /** AMO, inches. */
  drawIn: number;
  forceLbf: number;
  /** What to know before this weight is used; null where nothing speaks against it. */
  warning: string | null;
}

export interface ForceDraw {
  basis: ForceDrawBasis;
  /** Repeats averaged, shortest draw first. */
  readings: readonly ForceReading[];
  /** From brace where it takes part, else from the first reading, to the last; inches AMO. */
  rangeIn: { from: number; to: number };
  /** About the curve as a whole. */
  warnings: readonly string[];
  /** Why no weight is told at an AMO draw; null where one is. The answers below throw it. */
  whyNot(drawIn: number): string | null;
  weightAt(drawIn: number): WeightAnswer;
  /** lbf per inch of draw. */
  slopeAt(drawIn: number): number;
  /** Work done from brace to an AMO draw, in lbf. */
  storedInLbf(toDrawIn: number): number;
}

/** Farthest that a weight is carried past the readings, inches. */
export const longestExtrapolationIn = 1;
/** Modelled weights are taken this far apart, inches. */
const modelStepIn = 0.25;
/** Up to here the curves of the published straight bows come back within 1 % of full weight. */
const longestGapIn = 4;

/** Work or stored energy in ft lbf from in lbf. */
export function ftLbfFromInLbf(inLbf: number): number {
  return inLbf / 12;
}

function bracedPoint(braceIn: number | null, firstDrawIn: number): Knot | null {
  if (braceIn === null) return null;
  if (!(braceIn > 0 && braceIn < 20)) {
    refuseField('braceIn', 'The brace height must lie between 0 and 20 in.');
  }
  const x = amoAtNock(braceIn);
  if (!(firstDrawIn > x)) {
    refuseField('readings', `A draw of ${inches(firstDrawIn)} is not past brace at ${inches(x)}.`);
  }
  return { x, y: 0 };
}

/** The modelled weights up to one reading, raised or lowered together to meet it. */
function modelKnots(reading: ForceReading, brace: Knot | null, model: ModelledForce): Knot[] {
  const to = reading.drawIn;
  const from = brace?.x ?? to - longestExtrapolationIn;
  const steps = Math.ceil((to - from) / modelStepIn);
  const draws = Array.from({ length: steps }, (_, i) => from + (i * (to - from)) / steps);
  const modelled = [...(brace === null ? draws : draws.slice(1)), to].map((x) => ({
    x,
    y: model(x),
  }));
  for (const [i, { x, y }] of modelled.entries()) {
    if (!(y > 0 && Number.isFinite(y) && y >= (modelled[i - 1]?.y ?? 0))) {
      refuseField(
        'modelledForceAt',
        `The modelled weight does not rise at ${decimal(x, 2)} in of draw.`,
      );
    }
  }
  const scale = reading.forceLbf / (modelled.at(-1)?.y ?? 1);
  const knots = modelled.map(({ x, y }) => ({ x, y: y * scale }));
  return brace === null ? knots : [brace, ...knots];
}

/** What to know before a weight strictly between two draws is used. */
interface Caution {
  from: number;
  to: number;
  sentence: string;
}

interface Shape {
  basis: ForceDrawBasis;
  /** None for one reading without a model. */
  curve: MonotoneCubic | null;
  cautions: Caution[];
}

interface Fit extends Shape {
  readings: readonly ForceReading[];
  brace: Knot | null;
  safeDrawIn: number | null;
  range: { from: number; to: number };
}

function gaps(knots: readonly Knot[]): Caution[] {
  return knots.slice(1).flatMap(({ x: to }, i) => {
    const from = knots[i]?.x ?? to;
    const place = `No reading between ${decimal(from, 4)} and ${inches(to)}`;
    const sentence = `${place}: weights and stored energy there are rough.`;
    return to - from > longestGapIn ? [{ from, to, sentence }] : [];
  });
}

function shapeOf(
  readings: readonly ForceReading[],
  brace: Knot | null,
  model: ModelledForce | null,
): Shape {
  const measured = readings.map(({ drawIn, forceLbf }) => ({ x: drawIn, y: forceLbf }));
  const everywhere = (sentence: string) => [{ from: 0, to: longestDrawIn, sentence }];
  const [first, second] = readings;
  if (first === undefined || readings.length >= 3) {
    const knots = brace === null ? measured : [brace, ...measured];
    return { basis: 'monotone cubic', curve: monotoneCubic(knots), cautions: gaps(knots) };
  }
  if (second !== undefined) {
    const sentence = 'Two readings only: the weight between them is taken from a straight line.';
    const curve = monotoneCubic(measured);
    return { basis: 'straight line', curve, cautions: everywhere(sentence) };
  }
  const only = `One reading only, at ${inches(first.drawIn)}`;
  if (model === null) {
    const cautions = everywhere(`${only}: no weight is known at any other draw.`);
    return { basis: 'one reading', curve: null, cautions };
  }
  const curve = monotoneCubic(modelKnots(first, brace, model));
  const cautions = everywhere(`${only}: the slope is modelled, not measured.`);
  return { basis: 'model', curve, cautions };
}

/** How far a draw lies outside the range, inches; negative inside. */
const pastIn = (drawIn: number, { from, to }: Fit['range']) => Math.max(from - drawIn, drawIn - to);

function whyNot(drawIn: number, { curve, range, brace, safeDrawIn }: Fit): string | null {
  if (!Number.isFinite(drawIn)) return 'Give the draw length in inches.';
  const at = `A draw of ${inches(drawIn)}`;
  if (safeDrawIn !== null && drawIn > safeDrawIn) {
    return `${at} is past the bow's maximum safe draw of ${inches(safeDrawIn)}.`;
  }
  if (brace !== null && drawIn < brace.x) return `${at} lies before brace at ${inches(brace.x)}.`;
  if (curve === null && drawIn !== range.to) {
    return `The bow was weighed at ${inches(range.to)} only: weigh it at ${inches(drawIn)} too.`;
  }
  return pastIn(drawIn, range) > longestExtrapolationIn
    ? `${at} is more than 1 in past the readings: weigh the bow nearer to it.`
    : null;
}

function warningAt(drawIn: number, { basis, readings, range, cautions }: Fit): string | null {
  const past = pastIn(drawIn, range);
  if (past > 0) {
    const slope = basis === 'model' ? 'the modelled slope' : 'the slope at the nearest reading';
    return `${inches(drawIn)} is ${inches(past)} past the readings: carried on by ${slope}.`;
  }
  if (readings.some((reading) => reading.drawIn === drawIn)) return null;
  return cautions.find(({ from, to }) => from < drawIn && drawIn < to)?.sentence ?? null;
}

/** The curve, and past its ends the straight line that runs on; a weight is never negative. */
function continued(curve: MonotoneCubic) {
  const near = (x: number) => Math.min(Math.max(x, curve.fromX), curve.toX);
  const at = (x: number) => Math.max(curve.at(near(x)) + (x - near(x)) * curve.slopeAt(near(x)), 0);
  return {
    at,
    slopeAt: (x: number) => curve.slopeAt(near(x)),
    integralTo: (x: number) =>
      curve.integralTo(near(x)) + ((x - near(x)) * (at(near(x)) + at(x))) / 2,
  };
}

function answersOf(fit: Fit): ForceDraw {
  const { basis, readings, range, cautions, safeDrawIn, curve, brace } = fit;
  const line = curve === null ? null : continued(curve);
  const checked = (drawIn: number) => {
    const why = whyNot(drawIn, fit);
    return why === null ? drawIn : refuseField('drawIn', why);
  };
  const warnings = cautions.map(({ sentence }) => sentence);
  if (safeDrawIn !== null && range.to > safeDrawIn) {
    const safe = `its maximum safe draw of ${inches(safeDrawIn)}`;
    warnings.push(`The bow was drawn to ${inches(range.to)}, past ${safe}.`);
  }
  return {
    basis,
    readings,
    rangeIn: range,
    warnings,
    whyNot: (drawIn) => whyNot(drawIn, fit),
    weightAt(drawIn) {
      const at = checked(drawIn);
      const forceLbf = line?.at(at) ?? readings[0]?.forceLbf ?? 0;
      return { drawIn: at, forceLbf, warning: warningAt(at, fit) };
    },
    slopeAt(drawIn) {
      const at = checked(drawIn);
      if (line !== null) return line.slopeAt(at);
      return refuseField('readings', 'One reading shows no slope: weigh the bow at a second draw.');
    },
    storedInLbf(toDrawIn) {
      const to = checked(toDrawIn);
      if (line !== null && range.from === brace?.x) return line.integralTo(to);
      return refuseField(
        'braceIn',
        'Stored energy needs the brace height and weights at three draws.',
      );
    },
  };
}

/**
 * The force-draw curve of a bow through its readings. Repeats at one draw are averaged here;
 * which pulls count is the caller's affair (a first pull that settles the limbs does not).
 *
 * Three draws or more: the monotone cubic of `monotoneCubic`, from brace (0 lb at brace height
 * + 1 3/4 in AMO) where the brace is given. Two: a straight line, said so. One: the shape of the
 * caller's model through that reading, said so, and without a model no other draw at all.
 * A weight is carried at most 1 in past the readings, straight on and with a warning, and never
 * past the maximum safe draw. Draws in inches AMO, forces in lbf, work in in lbf.
 * @throws ShopError BAD_INPUT for no or odd readings, a weight that falls while the draw rises
 * (both named), a model that does not rise; from the answers for a draw out of reach, for the
 * slope of one lone reading, for energy without a braced point.
 */
export function fitForceDraw(
  given: readonly ForceReading[],
  options: ForceDrawOptions = {},
): ForceDraw {
  const readings = readingsInOrder(given);
  const [first, last] = [readings[0]?.drawIn ?? 0, readings.at(-1)?.drawIn ?? 0];
  const brace = bracedPoint(options.braceIn ?? null, first);
  const shape = shapeOf(readings, brace, options.modelledForceAt ?? null);
  const from = brace !== null && shape.curve?.fromX === brace.x ? brace.x : first;
  const safeDrawIn = options.maxSafeDrawIn ?? null;
  if (safeDrawIn !== null && !(safeDrawIn > 0)) {
    refuseField('maxSafeDrawIn', 'The maximum safe draw must be over 0 in.');
  }
  return answersOf({ ...shape, readings, brace, safeDrawIn, range: { from, to: last } });
}

/** A weight, or the sentence why there is none. */
export type WeightOrWhy = WeightAnswer | { drawIn: number; forceLbf: null; why: string };

/** The weight at AMO 28 in beside the one at the customer's own draw, inches AMO. Never throws. */
export function weightsBeside28(
  curve: ForceDraw,
  customerDrawIn: number,
): { at28: WeightOrWhy; own: WeightOrWhy } {
  const weight = (drawIn: number): WeightOrWhy => {
    const why = curve.whyNot(drawIn);
    return why === null ? curve.weightAt(drawIn) : { drawIn, forceLbf: null, why };
  };
  return { at28: weight(28), own: weight(customerDrawIn) };
}
