import type { InscriptionLayout } from '../../../shared/contract/inscriptions.ts';
import type { ContractInputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import { letteringMannerLabels, letteringSurfaceLabels } from '../../../shared/inscription.ts';
import { decimal } from '../../../shared/measure.ts';
import type { InscriptionRow } from '../../storage/agreement-tables.ts';
import { runCommand } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import { note } from '../orders/history.ts';
import { readOrder } from '../orders/order-row.ts';
import { changedOf } from '../record.ts';
import { layoutColumns, storedLayout } from './stored.ts';

function summaryOf(layout: InscriptionLayout): string {
  const how = [
    layout.position,
    letteringSurfaceLabels[layout.surface],
    letteringMannerLabels[layout.manner],
    layout.ink,
    `letters ${decimal(layout.letterHeightIn, 3)}" high`,
    layout.makerMark === '' ? '' : `maker's own mark: ${layout.makerMark}`,
  ];
  return `Lettering: ${how.filter((part) => part !== '').join(', ')}`;
}

function refuseOvertaken(before: InscriptionRow | null, rowVersion: number | null): void {
  if ((before?.row_version ?? null) === rowVersion) return;
  throw new ShopError('STALE', 'Somebody changed how the bow is lettered in the meantime.', {
    rowVersion: 'Read it again before you change it.',
  });
}

/** @see contract.inscriptions.setLayout */
export function setLayout(
  ctx: ShopContext,
  input: ContractInputs['inscriptions']['setLayout'],
): Promise<Changed> {
  const { commandId, orderId, rowVersion, ...layout } = input;
  return runCommand(ctx, { id: commandId, name: 'inscriptions.setLayout' }, async (trx) => {
    const order = await readOrder(trx.db, orderId);
    trx.about({ orderId, bowId: order.bow_id, customerId: order.customer_id });
    const before = await storedLayout(trx.db, orderId);
    refuseOvertaken(before, rowVersion);
    const columns = {
      ...layoutColumns(layout),
      recorded_at: trx.at,
      person_id: ctx.actor.personId,
    };
    const row =
      before === null
        ? await trx.insert('inscription', { id: ctx.newId(), order_id: orderId, ...columns })
        : await trx.update('inscription', before.id, before.row_version, columns);
    await note(trx, ctx, orderId, { kind: 'inscription', summary: summaryOf(layout) });
    return changedOf(row);
  });
}
