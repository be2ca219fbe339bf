import { type Stage, stageLabels } from '../../../shared/stages.ts';
import type { OrderRow } from '../../storage/tables.ts';

/** From the unpacking table until the finish goes on. */
const planStages: readonly Stage[] = ['arrived', 'agreed', 'weight-work', 'strip-sand'];

/** Why no plan can be accepted for an order as it stands; null where one can. */
export function whyNoPlan(order: OrderRow): string | null {
  if (order.going_home !== null) return 'The bow is going home: no work is planned on it.';
  if (!planStages.includes(order.stage)) {
    return `The order stands in "${stageLabels[order.stage]}": a plan is made from "${stageLabels.arrived}" to "${stageLabels['strip-sand']}".`;
  }
  if (order.bow_id === null) return 'Nobody has said which bow this is: identify it first.';
  if (order.target_weight_lbf === null || order.target_draw_in === null) {
    return 'The order has no target weight and draw: agree them first.';
  }
  return null;
}
