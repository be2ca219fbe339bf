import type { ContractInputs } from '../../../shared/contract/types.ts';
import type { OrderUndershoot, Shortfall } from '../../../shared/contract/undershoot.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import { weightAtDraw } from '../../../shared/measure.ts';
import { undershootOfferLabels } from '../../../shared/undershoot.ts';
import { runCommand } from '../../storage/commands.ts';
import type { OpenShop, ShopContext } from '../../storage/context.ts';
import type { OrderRow } from '../../storage/tables.ts';
import { isUndershot } from '../gates/conditions.ts';
import { readFacts } from '../gates/facts.ts';
import type { GateFacts } from '../gates/gate-facts.ts';
import { note } from '../orders/history.ts';
import { readOrder } from '../orders/order-row.ts';
import { changedOf, notFound } from '../record.ts';
import { storedUndershoots } from './stored.ts';

type Inputs = ContractInputs['undershoot'];

/** How far the bow came out under its target; null while it did not, or nobody can tell. */
function shortfallOf(facts: GateFacts): Shortfall | null {
  const { afterSandingLbf, targetLbf, targetDrawIn } = facts;
  if (!isUndershot(facts) || afterSandingLbf === null) return null;
  if (targetLbf === null || targetDrawIn === null) return null;
  return { measuredLbf: afterSandingLbf, targetLbf, drawIn: targetDrawIn };
}

/** What is known and offered of an order under its target. */
export async function undershootOf(shop: OpenShop, order: OrderRow): Promise<OrderUndershoot> {
  const facts = await readFacts(shop.read, order, shop.now());
  const offers = await storedUndershoots(shop.read, order.id);
  const people = await shop.read.selectFrom('person').select(['id', 'name']).execute();
  return {
    now: shortfallOf(facts),
    isOffered: facts.undershootOffered,
    offers: offers
      .toReversed()
      .slice(0, 200)
      .map((row) => ({
        id: row.id,
        rowVersion: row.row_version,
        measuredLbf: row.measured_lbf,
        targetLbf: row.target_lbf,
        drawIn: row.draw_in,
        offer: row.offer,
        priceChangeCents: row.price_change_cents,
        words: row.words,
        proposedAt: row.proposed_at,
        proposedBy: people.find((person) => person.id === row.person_id)?.name ?? '',
        struckReason: row.struck_reason,
      })),
  };
}

/** @see contract.undershoot.propose */
export function proposeUndershoot(ctx: ShopContext, input: Inputs['propose']): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'undershoot.propose' }, async (trx) => {
    const order = await readOrder(trx.db, input.orderId);
    trx.about({ orderId: order.id, bowId: order.bow_id, customerId: order.customer_id });
    const short = shortfallOf(await readFacts(trx.db, order, trx.at));
    if (short === null) {
      throw new ShopError('CONFLICT', 'The last weighing after sanding is not under the target.');
    }
    refuseHollowOffer(input, order);
    const row = await trx.insert('undershoot', {
      id: ctx.newId(),
      order_id: order.id,
      measured_lbf: short.measuredLbf,
      target_lbf: short.targetLbf,
      draw_in: short.drawIn,
      offer: input.offer,
      price_change_cents: input.priceChangeCents,
      words: input.words,
      proposed_at: trx.at,
      person_id: ctx.actor.personId,
      struck_reason: null,
    });
    const measured = weightAtDraw(short.measuredLbf, short.drawIn);
    await note(trx, ctx, order.id, {
      kind: 'undershoot',
      summary: `Under the target at ${measured}. Offered: ${undershootOfferLabels[input.offer].toLowerCase()}`,
      reason: input.words === '' ? null : input.words,
    });
    return changedOf(row);
  });
}

/** An offer must say what the customer gets by it. */
function refuseHollowOffer(input: Inputs['propose'], order: OrderRow): void {
  const refuse = (sentence: string, field: string, hint: string): never => {
    throw new ShopError('BAD_INPUT', sentence, { [field]: hint });
  };
  const lower = -input.priceChangeCents;
  if (input.offer === 'price' && lower === 0) {
    refuse('Say by how much the price falls.', 'priceChangeCents', 'Give an amount.');
  }
  if (input.offer === 'accept' && lower !== 0) {
    refuse(
      'Keeping the bow as it is changes no price.',
      'priceChangeCents',
      'Offer a lower price instead.',
    );
  }
  if (input.offer === 'remedy' && input.words.trim().length < 3) {
    refuse('Say what is offered to put it right.', 'words', 'Write the offer in words.');
  }
  if (order.estimate_cents !== null && lower > order.estimate_cents) {
    refuse(
      'The price cannot fall below nothing.',
      'priceChangeCents',
      'Give no more than the price of the order.',
    );
  }
}

/** @see contract.undershoot.strikeOut */
export function strikeOutUndershoot(
  ctx: ShopContext,
  input: Inputs['strikeOut'],
): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'undershoot.strikeOut' }, async (trx) => {
    const offer = await trx.db
      .selectFrom('undershoot')
      .selectAll()
      .where('id', '=', input.id)
      .executeTakeFirst();
    if (offer === undefined) throw notFound('undershoot', input.id);
    trx.about({ orderId: offer.order_id });
    if (offer.struck_reason !== null) {
      throw new ShopError('CONFLICT', 'This offer is already struck out.');
    }
    const row = await trx.update('undershoot', offer.id, input.rowVersion, {
      struck_reason: input.reason,
    });
    await note(trx, ctx, offer.order_id, {
      kind: 'strike-out',
      summary: `Offer struck out: ${undershootOfferLabels[offer.offer].toLowerCase()}`,
      reason: input.reason,
    });
    return changedOf(row);
  });
}
