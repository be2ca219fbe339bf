import type { OrderDetail } from '../../../shared/contract/orders.ts';
import type { Reading } from '../../../shared/contract/readings.ts';
import { ShopError } from '../../../shared/errors.ts';
import { decimal, weightAtDraw } from '../../../shared/measure.ts';
import { type ForceDraw, fitForceDraw, weightsBeside28 } from '../../limb/index.ts';
import { dayOf } from '../day.ts';

/** A weight as the owner of the bow is told it. */
export interface CareWeight {
  label: string;
  text: string;
}

/** Weights of the bow as it leaves. */
export interface CareWeights {
  lines: CareWeight[];
  /** The weight arrows are chosen for, lbf at an AMO draw in inches; null where none is known. */
  forArrows: { forceLbf: number; drawIn: number } | null;
}

/** Two draws this near are one as a rule is read, inches. */
const sameDraw = 1 / 16;

/** The weighing that tells how the bow leaves: of a worked limb only one after the work does. */
export function leavingReading({ readings, card }: OrderDetail): Reading | null {
  const alive = readings
    .filter(({ struckReason }) => struckReason === null)
    .toSorted((a, b) => (a.weighedAt < b.weighedAt ? -1 : 1));
  const final = alive.findLast(({ phase }) => phase === 'final');
  if (final !== undefined) return final;
  const worked = card.route.includes('weight-work') || card.route.includes('strip-sand');
  return alive.findLast(({ phase }) => !worked || phase === 'after-sanding') ?? null;
}

/**
 * Farthest draw a weight is told at, inches AMO: the safe draw, else the marked one. What was
 * measured does not widen it.
 */
export function farthestDraw({ bow }: OrderDetail): number | null {
  if (bow === null) return null;
  if (bow.maxSafeDrawIn !== null) return bow.maxSafeDrawIn;
  return bow.markedDrawReference === 'amo' ? bow.markedDrawIn : null;
}

/** null where no curve goes through what was read, e.g. because it falls while the draw rises. */
function curveOf(reading: Reading, maxSafeDrawIn: number | null): ForceDraw | null {
  try {
    return fitForceDraw(reading.weights, { braceIn: reading.braceIn, maxSafeDrawIn });
  } catch (error) {
    if (error instanceof ShopError) return null;
    throw error;
  }
}

interface Told {
  text: string;
  forceLbf: number | null;
}

/** Measured, or between measured draws; carried past them it is not told at all. */
function told(reading: Reading, curve: ForceDraw, drawIn: number, own: number): Told {
  const measured = reading.weights.find((each) => Math.abs(each.drawIn - drawIn) < sameDraw);
  const why = curve.whyNot(drawIn);
  if (measured !== undefined && why === null) {
    return { text: `${measured.text}, measured`, forceLbf: measured.forceLbf };
  }
  const { at28, own: atOwn } = weightsBeside28(curve, own);
  const answer = Math.abs(drawIn - 28) < sameDraw ? at28 : atOwn;
  const first = reading.weights[0]?.drawIn ?? drawIn;
  const between = drawIn > first && drawIn < curve.rangeIn.to;
  if (answer.forceLbf === null) return { text: `not told: ${answer.why}`, forceLbf: null };
  if (!between) return { text: 'not measured', forceLbf: null };
  const text = `${weightAtDraw(answer.forceLbf, drawIn)}, by calculation between measured draws`;
  return { text, forceLbf: answer.forceLbf };
}

function asMeasured(reading: Reading): CareWeights {
  const text = reading.weights.map((weight) => weight.text).join(', ');
  return { lines: [{ label: 'Weight as measured', text }], forArrows: null };
}

/** What the bow draws at AMO 28 in and at its owner's own draw. */
export function careWeights(order: OrderDetail): CareWeights {
  const reading = leavingReading(order);
  if (reading === null || reading.weights.length === 0) {
    const text = 'not weighed since the work';
    return { lines: [{ label: 'Weight', text }], forArrows: null };
  }
  // A draw to another reference may not pass for AMO 28 in.
  if (reading.drawReference !== 'amo') return asMeasured(reading);
  const curve = curveOf(reading, farthestDraw(order));
  if (curve === null) return asMeasured(reading);
  const own = order.customer?.ownDrawIn ?? null;
  const at28 = told(reading, curve, 28, own ?? 28);
  const lines = [{ label: 'Weight at 28" AMO', text: at28.text }];
  const known = at28.forceLbf === null ? [] : [{ forceLbf: at28.forceLbf, drawIn: 28 }];
  if (own !== null && Math.abs(own - 28) >= sameDraw) {
    const at = told(reading, curve, own, own);
    lines.push({ label: `At your own draw, ${decimal(own, 4)}"`, text: at.text });
    if (at.forceLbf !== null) known.push({ forceLbf: at.forceLbf, drawIn: own });
  }
  if (known.length === 0) {
    lines.push({ label: 'As measured', text: reading.weights.map((each) => each.text).join(', ') });
    known.push(...reading.weights);
  }
  lines.push({ label: 'Weighed', text: dayOf(reading.weighedAt) });
  const heaviest = known.toSorted((a, b) => b.forceLbf - a.forceLbf)[0] ?? null;
  return {
    lines,
    forArrows: heaviest === null ? null : { forceLbf: heaviest.forceLbf, drawIn: heaviest.drawIn },
  };
}
