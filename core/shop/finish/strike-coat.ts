import type { ContractInputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import { coatPurposeLabels } from '../../../shared/finish.ts';
import { runCommand } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import { note } from '../orders/history.ts';
import { changedOf, notFound } from '../record.ts';

/** One bow's coat of a session; the others of the session stand. @see contract.finish.strikeOutCoat */
export function strikeOutCoat(
  ctx: ShopContext,
  input: ContractInputs['finish']['strikeOutCoat'],
): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'finish.strikeOutCoat' }, async (trx) => {
    const found = await trx.db
      .selectFrom('coat')
      .selectAll()
      .where('id', '=', input.id)
      .executeTakeFirst();
    if (found === undefined) throw notFound('coat', input.id);
    trx.about({ orderId: found.order_id, bowId: found.bow_id });
    if (found.struck_reason !== null) {
      throw new ShopError('CONFLICT', 'This coat is already struck out.');
    }
    const patch = { struck_reason: input.reason };
    const row = await trx.update('coat', found.id, input.rowVersion, patch);
    await note(trx, ctx, found.order_id, {
      kind: 'strike-out',
      summary: `Struck out: ${coatPurposeLabels[found.purpose].toLowerCase()}`,
      reason: input.reason,
    });
    return changedOf(row);
  });
}
