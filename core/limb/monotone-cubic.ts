import { ShopError } from '../../shared/errors.ts';

/** A point that a curve must pass through, in whatever units the caller keeps. */
export interface Knot {
  x: number;
  y: number;
}

/** A smooth curve through its knots that never leaves the span of two neighbouring ones. */
export interface MonotoneCubic {
  /** First and last knot, in units of x. The curve is not defined outside them. */
  fromX: number;
  toX: number;
  /** Units of y. */
  at(x: number): number;
  /** Units of y over units of x. */
  slopeAt(x: number): number;
  /** Area under the curve from the first knot to x, units of y times units of x. */
  integralTo(x: number): number;
}

/** One stretch between two knots: y + d t + c t^2 + b t^3, with t from its own start. */
interface Piece {
  x: number;
  h: number;
  y: number;
  d: number;
  c: number;
  b: number;
  /** Area under all pieces before it. */
  before: number;
}

function refuse(sentence: string): never {
  throw new ShopError('BAD_INPUT', sentence, { knots: sentence });
}

function refuseOddKnots(knots: readonly Knot[]): void {
  if (knots.length < 2) refuse('A curve needs at least two points.');
  for (const [i, { x, y }] of knots.entries()) {
    if (!Number.isFinite(x) || !Number.isFinite(y)) refuse(`Point ${i + 1} is not a number.`);
    const before = knots[i - 1]?.x ?? Number.NEGATIVE_INFINITY;
    if (!(x > before)) refuse(`Point ${i + 1} at ${x} does not lie past the one at ${before}.`);
  }
}

/** Slope of the parabola through three points at the first; h steps, s secants; never against s0. */
function endSlope(h0: number, h1: number, s0: number, s1: number): number {
  const slope = ((2 * h0 + h1) * s0 - h0 * s1) / (h0 + h1);
  return slope * s0 > 0 ? slope : 0;
}

/** Slopes at the knots before they are limited: of the parabola through three, 0 where data turn. */
function firstSlopes(steps: readonly number[], secants: readonly number[]): number[] {
  const count = steps.length;
  const [h, s] = [(i: number) => steps[i] ?? 0, (i: number) => secants[i] ?? 0];
  if (count === 1) return [s(0), s(0)];
  const inner = Array.from({ length: count - 1 }, (_, i) =>
    s(i) * s(i + 1) > 0 ? (h(i) * s(i + 1) + h(i + 1) * s(i)) / (h(i) + h(i + 1)) : 0,
  );
  const first = endSlope(h(0), h(1), s(0), s(1));
  const last = endSlope(h(count - 1), h(count - 2), s(count - 1), s(count - 2));
  return [first, ...inner, last];
}

/** Fritsch and Carlson's circle: slopes over secants with a^2 + b^2 <= 9 keep a piece monotone. */
function limitSlopes(slopes: number[], secants: readonly number[]): void {
  for (const [i, secant] of secants.entries()) {
    const [left, right] = [slopes[i] ?? 0, slopes[i + 1] ?? 0];
    const size = Math.hypot(left, right);
    const largest = 3 * Math.abs(secant);
    if (size <= largest) continue;
    slopes[i] = (left * largest) / size;
    slopes[i + 1] = (right * largest) / size;
  }
}

const areaOf = ({ y, d, c, b }: Piece, t: number) =>
  t * (y + t * (d / 2 + t * (c / 3 + (t * b) / 4)));

function piecesOf(knots: readonly Knot[]): Piece[] {
  const pairs = knots.slice(1).map((to, i) => ({ from: knots[i] ?? to, to }));
  const steps = pairs.map(({ from, to }) => to.x - from.x);
  const secants = pairs.map(({ from, to }) => (to.y - from.y) / (to.x - from.x));
  const slopes = firstSlopes(steps, secants);
  limitSlopes(slopes, secants);
  let before = 0;
  return pairs.map(({ from }, i) => {
    const [h, s] = [steps[i] ?? 0, secants[i] ?? 0];
    const [d, next] = [slopes[i] ?? 0, slopes[i + 1] ?? 0];
    const c = (3 * s - 2 * d - next) / h;
    const b = (d + next - 2 * s) / h ** 2;
    const piece = { x: from.x, h, y: from.y, d, c, b, before };
    before += areaOf(piece, h);
    return piece;
  });
}

/**
 * The monotone piecewise cubic through knots of rising x: between two knots it rises, falls or
 * stays level as they do, so it never overshoots. Two knots give a straight line. A monotone
 * parabola comes back exactly, its slope and area too; for other smooth monotone data the error
 * of the value is of the third order in the spacing of the knots.
 *
 * Source: F. N. Fritsch, R. E. Carlson, "Monotone piecewise cubic interpolation", SIAM J. Numer.
 * Anal. 17 (1980) 238-246; slopes by three-point differences, limited to the circle of radius 3.
 * @throws ShopError BAD_INPUT for fewer than two knots, knots out of order or not a number, and
 * when asked outside the knots
 */
export function monotoneCubic(knots: readonly Knot[]): MonotoneCubic {
  refuseOddKnots(knots);
  const pieces = piecesOf(knots);
  const fromX = knots[0]?.x ?? 0;
  const toX = knots.at(-1)?.x ?? 0;
  const locate = (x: number): { piece: Piece; t: number } => {
    if (!(x >= fromX && x <= toX)) {
      refuse(`${x} lies outside the points of the curve, ${fromX} to ${toX}.`);
    }
    const piece = pieces.findLast((one) => one.x <= x) ?? pieces[0];
    if (piece === undefined) refuse('A curve needs at least two points.');
    return { piece, t: x - piece.x };
  };
  return {
    fromX,
    toX,
    at(x) {
      const { piece, t } = locate(x);
      return piece.y + t * (piece.d + t * (piece.c + t * piece.b));
    },
    slopeAt(x) {
      const { piece, t } = locate(x);
      return piece.d + t * (2 * piece.c + t * 3 * piece.b);
    },
    integralTo(x) {
      const { piece, t } = locate(x);
      return piece.before + areaOf(piece, t);
    },
  };
}
