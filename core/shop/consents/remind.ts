import { consentLabels } from '../../../shared/consents.ts';
import type { ContractInputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import { runCommand } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import { note } from '../orders/history.ts';
import { readOrder } from '../orders/order-row.ts';
import { changedOf, notFound } from '../record.ts';
import { subjectsNow } from './read.ts';
import { stateOf } from './state.ts';
import { storedConsents } from './stored.ts';

/** @see contract.consents.remind */
export function remindOfConsent(
  ctx: ShopContext,
  input: ContractInputs['consents']['remind'],
): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'consents.remind' }, async (trx) => {
    const row = await trx.db
      .selectFrom('consent')
      .select('order_id')
      .where('id', '=', input.consentId)
      .executeTakeFirst();
    if (row === undefined) throw notFound('consent', input.consentId);
    const order = await readOrder(trx.db, row.order_id);
    trx.about({ orderId: order.id, bowId: order.bow_id, customerId: order.customer_id });
    const consent = (await storedConsents(trx.db, [order.id])).find(
      ({ id }) => id === input.consentId,
    );
    if (consent === undefined) throw notFound('consent', input.consentId);
    const subjects = await subjectsNow(trx.db, order);
    if (stateOf(consent, subjects[consent.kind]) !== 'waiting') {
      throw new ShopError('CONFLICT', 'Nothing waits for an answer here. Ask again instead.');
    }
    const kept = await trx.insert('consent_reminder', {
      id: ctx.newId(),
      consent_id: consent.id,
      sent_at: trx.at,
      how: input.how,
      note: input.note,
      person_id: ctx.actor.personId,
    });
    await note(trx, ctx, order.id, {
      kind: 'message',
      summary: `Reminded: ${consentLabels[consent.kind]} (${input.how})`,
    });
    return changedOf(kept);
  });
}
