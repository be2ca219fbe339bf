import type { ContractInputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import { runCommand } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import { note } from '../orders/history.ts';
import { changedOf, notFound } from '../record.ts';

type Input = ContractInputs['bench']['strikeOutRemoval'];
type BenchRecord = 'removal' | 'glass_check' | 'tiller_reading';

const names: Record<BenchRecord, string> = {
  removal: 'Bite',
  glass_check: 'Glass check',
  tiller_reading: 'Tiller reading',
};

/** The record stays readable, with the reason; nothing counts it any more. */
function strikeOut(name: string, table: BenchRecord) {
  return (ctx: ShopContext, input: Input): Promise<Changed> =>
    runCommand(ctx, { id: input.commandId, name }, async (trx) => {
      const before = await trx.db
        .selectFrom(table)
        .select(['order_id', 'bow_id', 'struck_reason'])
        .where('id', '=', input.id)
        .executeTakeFirst();
      if (before === undefined) throw notFound(names[table].toLowerCase(), input.id);
      trx.about({ orderId: before.order_id, bowId: before.bow_id });
      if (before.struck_reason !== null) {
        throw new ShopError(
          'CONFLICT',
          `This ${names[table].toLowerCase()} is already struck out.`,
        );
      }
      const row = await trx.update(table, input.id, input.rowVersion, {
        struck_reason: input.reason,
      });
      await note(trx, ctx, before.order_id, {
        kind: 'strike-out',
        summary: `Struck out: ${names[table].toLowerCase()}`,
        reason: input.reason,
      });
      return changedOf(row);
    });
}

export const strikeOutRemoval = strikeOut('bench.strikeOutRemoval', 'removal');
export const strikeOutGlassCheck = strikeOut('bench.strikeOutGlassCheck', 'glass_check');
export const strikeOutTiller = strikeOut('bench.strikeOutTiller', 'tiller_reading');
