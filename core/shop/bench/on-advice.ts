import type { ContractInputs, ContractOutputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import { type CommandTransaction, runCommand } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import { passGates } from '../gates/gates.ts';
import { readOrder } from '../orders/order-row.ts';
import { sentenceOf } from './bench-words.ts';
import { type Bench, readBench } from './read-bench.ts';

type Input = ContractInputs['bench']['recordSanding'] | ContractInputs['bench']['takeBite'];
type Result = ContractOutputs['bench']['takeBite'];

/** Two hands on one bow, or a reading struck out meanwhile: the card that was followed is no more. */
function refuseOtherAdvice(bench: Bench, advice: string): void {
  if (bench.hash === advice) return;
  throw new ShopError(
    'STALE',
    'The records of this bow changed while the card was shown: look at what comes next before anything more is cut. What is already cut is written down with its own amounts.',
    { advice: sentenceOf(bench.advice.step) },
  );
}

/**
 * Records what was taken off on the advice that was shown, through the gate of a bite.
 * @param record gets the owner's reason, null where nothing had to be let pass
 * @throws ShopError STALE where the advice is another one by now
 */
export function onAdvice(
  ctx: ShopContext,
  name: string,
  input: Input,
  record: (trx: CommandTransaction, bench: Bench, letPass: string | null) => Promise<Result>,
): Promise<Result> {
  return runCommand(ctx, { id: input.commandId, name }, async (trx) => {
    const order = await readOrder(trx.db, input.orderId);
    trx.about({ orderId: order.id, bowId: order.bow_id });
    const bench = await readBench(trx.db, order, trx.at);
    refuseOtherAdvice(bench, input.advice);
    const verdict = passGates(['bite'], bench.gateFacts, ctx.actor.role, input.override);
    if (!verdict.open) return { outcome: 'refused', orderId: order.id, missing: verdict.missing };
    const letPass = verdict.overridden.length > 0 ? (input.override?.reason ?? null) : null;
    return record(trx, bench, letPass);
  });
}
