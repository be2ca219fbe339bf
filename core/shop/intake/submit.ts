import type { ContractInputs, ContractOutputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import { type CommandTransaction, runCommand } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import { insertBow } from '../bows/bows.ts';
import { insertCustomer } from '../customers/customers.ts';
import { note } from '../orders/history.ts';
import { nextOrderNumber } from '../orders/number.ts';
import { orderColumns, refuseOddTarget } from '../orders/order-row.ts';
import { notFound } from '../record.ts';

type Input = ContractInputs['intake']['submit'];

async function customerIdOf(
  trx: CommandTransaction,
  ctx: ShopContext,
  choice: Input['customer'],
): Promise<string | null> {
  if (choice.is === 'shop') return null;
  if (choice.is === 'new') return (await insertCustomer(trx, ctx.newId(), choice.fields)).id;
  const row = await trx.db
    .selectFrom('customer')
    .select('id')
    .where('id', '=', choice.id)
    .executeTakeFirst();
  if (row === undefined) throw notFound('customer', choice.id);
  return row.id;
}

async function bowOf(
  trx: CommandTransaction,
  ctx: ShopContext,
  choice: Input['bow'],
  customerId: string | null,
): Promise<{ id: string; maxSafeDrawIn: number | null } | null> {
  if (choice.is === 'later') return null;
  if (choice.is === 'new') {
    const row = await insertBow(trx, ctx.newId(), customerId, choice.fields);
    return { id: row.id, maxSafeDrawIn: row.max_safe_draw_in };
  }
  const row = await trx.db
    .selectFrom('bow')
    .select(['id', 'customer_id', 'max_safe_draw_in'])
    .where('id', '=', choice.id)
    .executeTakeFirst();
  if (row === undefined) throw notFound('bow', choice.id);
  if (row.customer_id !== customerId) {
    throw new ShopError('CONFLICT', 'This bow belongs to somebody else.', {
      bow: 'Choose one of this customer, or add a new bow.',
    });
  }
  return { id: row.id, maxSafeDrawIn: row.max_safe_draw_in };
}

/** @see contract.intake.submit */
export function submitIntake(
  ctx: ShopContext,
  input: Input,
): Promise<ContractOutputs['intake']['submit']> {
  return runCommand(ctx, { id: input.commandId, name: 'intake.submit' }, async (trx) => {
    const customerId = await customerIdOf(trx, ctx, input.customer);
    const bow = await bowOf(trx, ctx, input.bow, customerId);
    refuseOddTarget(input.order, bow?.maxSafeDrawIn ?? null);
    const id = ctx.newId();
    const number = await nextOrderNumber(trx);
    trx.about({ orderId: id, bowId: bow?.id ?? null, customerId });
    const order = await trx.insert('shop_order', {
      id,
      number,
      customer_id: customerId,
      bow_id: bow?.id ?? null,
      ...orderColumns(input.order, { stripFirst: false, handover: 'shipped' }),
      stage: input.startsAt,
      stage_since: trx.at,
      inscription: '',
      limb_set_id: null,
      came_as: 'whole-bow',
      going_home: null,
      going_home_reason: '',
      created_at: trx.at,
    });
    await note(trx, ctx, id, {
      kind: 'created',
      summary: `Request taken in (${input.cameBy})`,
      to: input.startsAt,
    });
    if (input.draftId !== null) {
      await trx.db
        .deleteFrom('draft')
        .where('id', '=', input.draftId)
        .where('person_id', '=', ctx.actor.personId)
        .execute();
    }
    return { id, rowVersion: order.row_version, number };
  });
}
