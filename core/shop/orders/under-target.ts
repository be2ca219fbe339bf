import type { UnderTarget } from '../../../shared/contract/order-card.ts';
import { difference } from '../../../shared/measure.ts';
import type { Stage } from '../../../shared/stages.ts';
import type { OrderRow } from '../../storage/tables.ts';
import { tolerance } from '../gates/conditions.ts';
import type { StoredReading } from '../readings/stored.ts';
import { weightAtAmoDraw } from '../readings/weights.ts';

/** Stages in which weight still comes off; later ones have the gate of the final check. */
const takingOff: readonly Stage[] = ['weight-work', 'strip-sand'];

/**
 * Whether the bow is under its target while weight is still to come off. Before sanding any pound
 * under counts, since sanding only takes more; after it the tolerance of the shop does.
 */
export function underTargetOf(
  order: Pick<OrderRow, 'stage' | 'going_home' | 'target_weight_lbf' | 'target_draw_in'>,
  readings: readonly StoredReading[],
): UnderTarget | null {
  const { target_weight_lbf: targetLbf, target_draw_in: drawIn } = order;
  if (targetLbf === null || drawIn === null || order.going_home !== null) return null;
  if (!takingOff.includes(order.stage)) return null;
  const last = readings
    .filter((reading) => reading.struck_reason === null)
    .map(({ phase, pulls, draw_reference, weighed_at }) => ({
      isSanded: phase === 'after-sanding',
      lbf: weightAtAmoDraw(pulls, draw_reference, drawIn),
      at: weighed_at,
    }))
    .filter(({ lbf }) => lbf !== null)
    .at(-1);
  if (last === undefined || last.lbf === null) return null;
  const byLbf = difference(targetLbf, last.lbf);
  const allowed = last.isSanded ? tolerance.underLbf : 0;
  if (byLbf <= allowed) return null;
  return { byLbf, nowLbf: last.lbf, targetLbf, drawIn, isSanded: last.isSanded, since: last.at };
}
