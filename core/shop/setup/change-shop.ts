import type { Changed } from '../../../shared/fields.ts';
import { runCommand } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import type { ShopRow } from '../../storage/tables.ts';
import { changedOf } from '../record.ts';

/**
 * Settings that stand in the shop's own row, changed by one command.
 * @throws ShopError STALE where somebody changed the shop since it was read
 */
export function changeShop(
  ctx: ShopContext,
  { commandId, rowVersion }: { commandId: string; rowVersion: number },
  name: string,
  columns: Partial<Omit<ShopRow, 'id' | 'row_version'>>,
): Promise<Changed> {
  return runCommand(ctx, { id: commandId, name }, async (trx) =>
    changedOf(await trx.update('shop', 'shop', rowVersion, columns)),
  );
}
