import type { ContractInputs, ContractOutputs } from '../../../shared/contract/types.ts';
import { runCommand } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import { readFacts } from '../gates/facts.ts';
import { passGates } from '../gates/gates.ts';
import { note } from '../orders/history.ts';
import { readOrder } from '../orders/order-row.ts';
import { changedOf } from '../record.ts';
import { bowOnBench } from './bow-on-bench.ts';

/** @see contract.bench.noteRemoval */
export function noteRemoval(
  ctx: ShopContext,
  input: ContractInputs['bench']['noteRemoval'],
): Promise<ContractOutputs['bench']['noteRemoval']> {
  return runCommand(ctx, { id: input.commandId, name: 'bench.noteRemoval' }, async (trx) => {
    const order = await readOrder(trx.db, input.orderId);
    const facts = await readFacts(trx.db, order, trx.at);
    const verdict = passGates(['bite'], facts, ctx.actor.role, input.override);
    if (!verdict.open) {
      trx.about({ orderId: order.id, bowId: order.bow_id });
      return { outcome: 'refused', orderId: order.id, missing: verdict.missing };
    }
    const bowId = bowOnBench(trx, order);
    const row = await trx.insert('removal', {
      id: ctx.newId(),
      order_id: order.id,
      bow_id: bowId,
      limb_set_id: order.limb_set_id,
      plan_id: null,
      method: 'noted',
      tool: '',
      edge_radius_in: null,
      modelled_drop: null,
      drop_sd: null,
      forecast_lbf: null,
      forecast_sd_lbf: null,
      planned_at: trx.at,
      done_at: trx.at,
      remeasured_at: null,
      note: input.note,
      person_id: ctx.actor.personId,
      struck_reason: null,
    });
    await note(trx, ctx, order.id, {
      kind: 'removal',
      summary: `Bite taken: ${input.note}`.slice(0, 1000),
      reason: verdict.overridden.length > 0 ? (input.override?.reason ?? null) : null,
    });
    return { outcome: 'recorded', ...changedOf(row) };
  });
}
