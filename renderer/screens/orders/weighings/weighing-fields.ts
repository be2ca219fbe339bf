import type { DrawReference } from '../../../../shared/bows.ts';
import type { OrderDetail } from '../../../../shared/contract/orders.ts';
import { readingPhases } from '../../../../shared/contract/readings.ts';
import type { Stage } from '../../../../shared/stages.ts';
import type { ReadingPhase } from '../words.ts';
import type { TypedPull } from './live-weights.ts';

export interface WeighingFields {
  phase: ReadingPhase;
  drawReference: DrawReference;
  riserNote: string;
  scaleId: string | null;
  rigZeroLbf: number | null;
  braceIn: number | null;
  stringNote: string;
  stringTrack: string;
  supportPoint: string;
  pullPoint: string;
  tillerIn: number | null;
  temperatureF: number | null;
  moisturePct: number | null;
  strungMinutes: number | null;
  flexedFirst: boolean;
  note: string;
  pulls: TypedPull[];
}

const phaseIn: Partial<Record<Stage, ReadingPhase>> = {
  'weight-work': 'work',
  'strip-sand': 'after-sanding',
  finish: 'after-sanding',
  cure: 'final',
  'final-check': 'final',
  packed: 'final',
};

export function phaseFrom(opens: string | null): ReadingPhase | null {
  return readingPhases.find((phase) => phase === opens) ?? null;
}

/** Three pulls that count besides the first one. */
const firstRows = 4;

export const newPull = (key: number, drawIn: number | null): TypedPull => ({
  key,
  drawIn,
  forceLbf: null,
});

/** A weighing as it starts: what rarely changes is taken over from the last one of this order. */
export function startWeighing(order: OrderDetail, opens: string | null): WeighingFields {
  const last = order.readings.findLast((reading) => reading.struckReason === null);
  const drawIn = order.targetDrawIn ?? 28;
  return {
    phase: phaseFrom(opens) ?? phaseIn[order.card.stage] ?? 'arrival',
    drawReference: 'amo',
    riserNote: last?.riserNote ?? '',
    scaleId: null,
    rigZeroLbf: 0,
    braceIn: null,
    stringNote: last?.stringNote ?? '',
    stringTrack: '',
    supportPoint: last?.supportPoint ?? '',
    pullPoint: last?.pullPoint ?? '',
    tillerIn: null,
    temperatureF: null,
    moisturePct: null,
    strungMinutes: null,
    flexedFirst: false,
    note: '',
    pulls: Array.from({ length: firstRows }, (_, key) => newPull(key, drawIn)),
  };
}
