import type { WeightStory } from '../../../shared/contract/order-card.ts';
import type { OrderRow } from '../../storage/tables.ts';
import type { StoredReading } from '../readings/stored.ts';
import { weightAtAmoDraw } from '../readings/weights.ts';

/** The draw an order is told at: its target's, or 28 in where no target is set. */
export function storyDrawIn(order: OrderRow): number {
  return order.target_draw_in ?? 28;
}

/** Arrival weight, present weight and target, all at one AMO draw. Struck-out weighings are left out. */
export function weightStoryOf(order: OrderRow, readings: readonly StoredReading[]): WeightStory {
  const drawIn = storyDrawIn(order);
  const weights = readings
    .filter((reading) => reading.struck_reason === null)
    .map((reading) => ({
      phase: reading.phase,
      forceLbf: weightAtAmoDraw(reading.pulls, reading.draw_reference, drawIn),
    }))
    .filter((weight) => weight.forceLbf !== null);
  return {
    arrivalLbf: weights.find((weight) => weight.phase === 'arrival')?.forceLbf ?? null,
    nowLbf: weights.at(-1)?.forceLbf ?? null,
    targetLbf: order.target_weight_lbf,
    drawIn,
  };
}
