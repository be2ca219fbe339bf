import type { ContractInputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import { closedStages } from '../../../shared/stages.ts';
import { type CommandTransaction, runCommand } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import type { OrderFinishRow, OrderRow } from '../../storage/tables.ts';
import { note } from '../orders/history.ts';
import { readOrder } from '../orders/order-row.ts';
import { changedOf } from '../record.ts';
import { readSystem, sheetOf } from './system-row.ts';

type Input = ContractInputs['finish']['choose'];

/** @throws ShopError CONFLICT for an order whose bow has left or has nothing to finish. */
export function refuseLeft(order: OrderRow): void {
  if (!closedStages.includes(order.stage)) return;
  throw new ShopError('CONFLICT', `Order ${order.number} is closed: its bow is not here any more.`);
}

/** The bow the work is done on. @throws ShopError CONFLICT where nobody has said which it is. */
export function bowIdOf(order: OrderRow): string {
  if (order.bow_id !== null) return order.bow_id;
  throw new ShopError('CONFLICT', `Order ${order.number}: identify the bow first.`, {
    bow: 'The bow is not identified.',
  });
}

function refuseStaleChoice(present: OrderFinishRow | undefined, input: Input): void {
  if ((present?.row_version ?? null) === input.rowVersion) return;
  throw new ShopError('STALE', 'Somebody chose a finish in the meantime. Look again, then repeat.');
}

async function refuseCoated(trx: CommandTransaction, orderId: string, systemId: string) {
  const coat = await trx.db
    .selectFrom('coat')
    .innerJoin('spray_session', 'spray_session.id', 'coat.session_id')
    .select('coat.id')
    .where('coat.order_id', '=', orderId)
    .where('coat.struck_reason', 'is', null)
    .where('coat.purpose', '!=', 'seal')
    .where('spray_session.finish_system_id', '!=', systemId)
    .executeTakeFirst();
  if (coat === undefined) return;
  throw new ShopError(
    'CONFLICT',
    'Coats of another finish are on the bow. Strike them out if they are not, or strip it first.',
    { finishSystemId: 'The bow is coated with another finish.' },
  );
}

/** The sheet is frozen with the choice; choosing the same again takes the sheet as it is now. */
export function chooseFinish(ctx: ShopContext, input: Input): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'finish.choose' }, async (trx) => {
    const order = await readOrder(trx.db, input.orderId);
    trx.about({ orderId: order.id, bowId: order.bow_id });
    const system = await readSystem(trx.db, input.finishSystemId);
    const present = await trx.db
      .selectFrom('order_finish')
      .selectAll()
      .where('order_id', '=', order.id)
      .executeTakeFirst();
    refuseStaleChoice(present, input);
    refuseLeft(order);
    await refuseCoated(trx, order.id, system.id);
    const columns = {
      finish_system_id: system.id,
      sheet_json: system.sheet_json,
      chosen_at: trx.at,
      person_id: ctx.actor.personId,
    };
    const row =
      present === undefined
        ? await trx.insert('order_finish', { id: ctx.newId(), order_id: order.id, ...columns })
        : await trx.update('order_finish', present.id, present.row_version, columns);
    const { revision, datedOn } = sheetOf(system);
    await note(trx, ctx, order.id, {
      kind: 'finish',
      summary: `Finish chosen: ${system.name}, sheet ${revision} of ${datedOn}`,
    });
    return changedOf(row);
  });
}
