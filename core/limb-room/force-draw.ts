import type { ForceDrawAnswer } from '../../shared/plan-answer.ts';
import type { PlanInput } from '../../shared/plan-input.ts';
import {
  amoAtNock,
  type ForceDraw,
  type ForceReading,
  fitForceDraw,
  ftLbfFromInLbf,
  type MeasuredBow,
  type MonotoneCubic,
  monotoneCubic,
  solveStaticBow,
  wholeBowOf,
} from '../limb/index.ts';

/** Segments from fade to tip: a curve for the eye. */
const segments = 30;
const stepIn = 1;
const drawnEveryIn = 0.5;

interface Modelled {
  points: ForceReading[];
  storedInLbf: number;
}

/** Weights of the modelled bow from just past brace to a draw, AMO; null where it has none. */
export function modelledCurve(bow: MeasuredBow, toDrawIn: number): Modelled | null {
  const braceAt = amoAtNock(bow.braceIn);
  const steps = Math.max(2, Math.ceil((toDrawIn - braceAt) / stepIn));
  const drawsIn = Array.from(
    { length: steps },
    (_, i) => braceAt + ((toDrawIn - braceAt) * (i + 1)) / steps,
  );
  const solved = solveStaticBow(wholeBowOf(bow), { braceIn: bow.braceIn, drawsIn, segments });
  if (solved.status !== 'converged') return null;
  const points = solved.value.draws.map(({ drawIn, forceLbf }) => ({ drawIn, forceLbf }));
  const storedInLbf = solved.value.draws.at(-1)?.storedInLbf ?? 0;
  return { points: [{ drawIn: braceAt, forceLbf: 0 }, ...points], storedInLbf };
}

const raised = (points: readonly ForceReading[], by: number) =>
  points.map(({ drawIn, forceLbf }) => ({ drawIn, forceLbf: forceLbf * by }));

function curveOf(fit: ForceDraw): ForceReading[] {
  const { from, to } = fit.rangeIn;
  const steps = Math.min(118, Math.ceil((to - from) / drawnEveryIn));
  const draws = Array.from(
    { length: steps + 1 },
    (_, i) => from + ((to - from) * i) / (steps || 1),
  );
  return draws
    .filter((draw) => fit.whyNot(draw) === null)
    .map((drawIn) => ({ drawIn, forceLbf: fit.weightAt(drawIn).forceLbf }));
}

function weightNote(fit: ForceDraw, drawIn: number) {
  const why = fit.whyNot(drawIn);
  if (why !== null) return { drawIn, forceLbf: null, note: why };
  const { forceLbf, warning } = fit.weightAt(drawIn);
  return { drawIn, forceLbf, note: warning ?? '' };
}

function storedFtLbf(fit: ForceDraw, drawIn: number): number | null {
  if (fit.basis !== 'monotone cubic' || fit.whyNot(drawIn) !== null) return null;
  return ftLbfFromInLbf(fit.storedInLbf(drawIn));
}

/** Readings of the input, or the present weight alone where it has none. */
function readingsOf({ readings, wish }: PlanInput): ForceReading[] {
  return readings.length > 0 ? [...readings] : [{ drawIn: wish.drawIn, forceLbf: wish.weightLbf }];
}

/**
 * The bow when all is done, drawn as it draws now: the model tells what share of the weight is left
 * at each draw, and `nowAt` what it is a share of, lbf at inches AMO. At the last draw it is what
 * is forecast.
 */
function curveAfter(
  then: Modelled,
  weightLbf: number,
  shape: MonotoneCubic,
  nowAt: (drawIn: number) => number,
): ForceReading[] {
  const shares = then.points.map(({ drawIn, forceLbf }) => {
    const modelled = shape.at(Math.min(Math.max(drawIn, shape.fromX), shape.toX));
    return { drawIn, forceLbf: modelled > 0 ? (forceLbf / modelled) * nowAt(drawIn) : 0 };
  });
  const last = shares.at(-1)?.forceLbf ?? 0;
  return last > 0 ? raised(shares, weightLbf / last) : [];
}

/**
 * Force-draw curve of the bow as it is: measured, fitted, and modelled up to the plan's draw on
 * the scale of the present weight. Inches AMO, lbf.
 * @param after the bow when all is done, and what it is forecast to weigh
 * @returns null where the model has no curve
 * @throws ShopError BAD_INPUT for weights that fall while the draw rises
 */
export function forceDrawOf(
  input: PlanInput,
  bow: MeasuredBow,
  after: { bow: MeasuredBow; weightLbf: number } | null,
): ForceDrawAnswer | null {
  const { drawIn, weightLbf } = input.wish;
  const model = modelledCurve(bow, drawIn);
  const last = model?.points.at(-1)?.forceLbf ?? 0;
  if (model === null || !(last > 0)) return null;
  const scale = weightLbf / last;
  const shape = monotoneCubic(model.points.map((one) => ({ x: one.drawIn, y: one.forceLbf })));
  const fit = fitForceDraw(readingsOf(input), {
    braceIn: input.bow.braceIn,
    maxSafeDrawIn: input.bow.maxSafeDrawIn,
    modelledForceAt: (draw) => shape.at(Math.min(draw, shape.toX)),
  });
  const measured = fit.basis === 'monotone cubic' || fit.basis === 'straight line';
  const slopeFrom = measured && fit.whyNot(drawIn) === null ? 'readings' : 'model';
  const then = after === null ? null : modelledCurve(after.bow, drawIn);
  const nowAt = (draw: number) =>
    fit.whyNot(draw) === null
      ? fit.weightAt(draw).forceLbf
      : shape.at(Math.min(Math.max(draw, shape.fromX), shape.toX)) * scale;
  return {
    basis: fit.basis,
    measured: [...fit.readings],
    curve: curveOf(fit),
    modelled: raised(model.points, scale),
    after: then && after ? curveAfter(then, after.weightLbf, shape, nowAt) : [],
    slopeLbfPerIn: slopeFrom === 'readings' ? fit.slopeAt(drawIn) : shape.slopeAt(drawIn) * scale,
    slopeFrom,
    storedFtLbf: storedFtLbf(fit, drawIn),
    modelledStoredFtLbf: ftLbfFromInLbf(model.storedInLbf * scale),
    at28: weightNote(fit, 28),
    own: input.ownDrawIn === null ? null : weightNote(fit, input.ownDrawIn),
    warnings: [...fit.warnings],
  };
}
