import type { IntakeArrival } from '../../../shared/contract/intake.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { MissingItem } from '../../../shared/gates.ts';
import type { Stage } from '../../../shared/stages.ts';
import type { CommandTransaction } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import type { OrderRow } from '../../storage/tables.ts';
import { insertArrival } from '../arrival/arrival.ts';
import { insertBelongings } from '../arrival/belongings.ts';
import { moveForward } from '../orders/forward.ts';
import { note } from '../orders/history.ts';

export interface Standing {
  rowVersion: number;
  stage: Stage;
  missing: MissingItem[];
}

/** What is seen at once when a bow is handed over or its box opened; the rest is still to be done. */
async function writeArrival(
  trx: CommandTransaction,
  ctx: ShopContext,
  orderId: string,
  seen: IntakeArrival,
  cameBy: string,
): Promise<void> {
  const { belongings, ...fields } = seen;
  await insertArrival(trx, ctx, orderId, {
    ...fields,
    cameBy,
    packagingKept: false,
    packagingDamaged: false,
    restingSince: null,
    lookedOver: false,
    strung: 'not-yet',
    notStrungBecause: '',
    alignment: '',
    braceIn: null,
    tillerIn: null,
    stringTrack: '',
    note: '',
  });
  await insertBelongings(trx, ctx, orderId, belongings);
  await note(trx, ctx, orderId, { kind: 'arrival', summary: `Box opened ${seen.openedOn}` });
}

/**
 * Writes down a bow that is here already and moves its order to "arrived" where the gate is met.
 * Where it is not (the bow is to be identified later, say) the order stays in the mail.
 * @throws ShopError BAD_INPUT where something came along and nothing did.
 */
export async function takeUpBox(
  trx: CommandTransaction,
  ctx: ShopContext,
  order: OrderRow,
  seen: IntakeArrival,
  cameBy: string,
): Promise<Standing> {
  if (seen.nothingCameAlong && seen.belongings.length > 0) {
    throw new ShopError('BAD_INPUT', 'Something came along, or nothing did: not both.', {
      'arrival.belongings': 'List what came along, or say that nothing did.',
    });
  }
  await writeArrival(trx, ctx, order.id, seen, cameBy);
  const moved = await moveForward(trx, ctx, order, 'arrived');
  if (moved.outcome === 'moved') {
    return { rowVersion: moved.rowVersion, stage: moved.stage, missing: [] };
  }
  return { rowVersion: order.row_version, stage: order.stage, missing: moved.missing };
}
