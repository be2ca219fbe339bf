import type { ContractInputs, ContractOutputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import { type CommandTransaction, runCommand } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import type { OrderRow } from '../../storage/tables.ts';
import { insertBow } from '../bows/bows.ts';
import { insertCustomer } from '../customers/customers.ts';
import { note } from '../orders/history.ts';
import { nextOrderNumber } from '../orders/number.ts';
import { orderColumns, refuseOddTarget } from '../orders/order-row.ts';
import type { RouteOptions } from '../orders/route.ts';
import { notFound } from '../record.ts';
import { takeUpBox } from './take-up-box.ts';

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

/** Where the order goes home by, and which way round the work goes; both as the shop decided. */
function routeOptions(ctx: ShopContext, input: Input): RouteOptions {
  const stripFirst = input.stripFirst ?? false;
  if (stripFirst && ctx.actor.role !== 'owner') {
    throw new ShopError('NOT_ALLOWED', 'The owner decides to strip before the weight work.', {
      stripFirst: 'Leave it as usual; the owner may change it on the order.',
    });
  }
  return { stripFirst, handover: input.handover ?? 'shipped' };
}

function refuseUnseen(input: Input): void {
  if (input.startsAt === 'arrived' && input.arrival === undefined) {
    throw new ShopError('BAD_INPUT', 'The bow is here: say what was seen of it.', {
      'arrival.condition': 'Say how it came out of the box.',
    });
  }
  if (input.startsAt !== 'arrived' && input.arrival !== undefined) {
    throw new ShopError('BAD_INPUT', 'Only a bow that is here has been looked at.', {
      startsAt: 'Say that the bow is here.',
    });
  }
}

async function insertOrder(
  trx: CommandTransaction,
  ctx: ShopContext,
  input: Input,
): Promise<OrderRow> {
  const customerId = await customerIdOf(trx, ctx, input.customer);
  const bow = await bowOf(trx, ctx, input.bow, customerId);
  refuseOddTarget(input.order, bow?.maxSafeDrawIn ?? null);
  const id = ctx.newId();
  trx.about({ orderId: id, bowId: bow?.id ?? null, customerId });
  return trx.insert('shop_order', {
    id,
    number: await nextOrderNumber(trx),
    customer_id: customerId,
    bow_id: bow?.id ?? null,
    ...orderColumns(input.order, routeOptions(ctx, input)),
    // A bow that is here passes the gate of "arrived" below.
    stage: input.startsAt === 'arrived' ? 'in-mail' : input.startsAt,
    stage_since: trx.at,
    inscription: '',
    limb_set_id: null,
    came_as: input.cameAs ?? 'whole-bow',
    going_home: null,
    going_home_reason: '',
    tax_name: null,
    tax_rate_ppm: null,
    created_at: trx.at,
  });
}

async function dropDraft(
  trx: CommandTransaction,
  ctx: ShopContext,
  draftId: string | null,
): Promise<void> {
  if (draftId === null) return;
  await trx.db
    .deleteFrom('draft')
    .where('id', '=', draftId)
    .where('person_id', '=', ctx.actor.personId)
    .execute();
}

/** @see contract.intake.submit */
export function submitIntake(
  ctx: ShopContext,
  input: Input,
): Promise<ContractOutputs['intake']['submit']> {
  return runCommand(ctx, { id: input.commandId, name: 'intake.submit' }, async (trx) => {
    refuseUnseen(input);
    const order = await insertOrder(trx, ctx, input);
    await note(trx, ctx, order.id, {
      kind: 'created',
      summary: `Request taken in (${input.cameBy})`,
      to: order.stage,
    });
    const standing =
      input.arrival === undefined
        ? { rowVersion: order.row_version, stage: order.stage, missing: [] }
        : await takeUpBox(trx, ctx, order, input.arrival, input.cameBy);
    await dropDraft(trx, ctx, input.draftId);
    return { id: order.id, number: order.number, ...standing };
  });
}
