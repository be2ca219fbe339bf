import type { ContractInputs, ContractOutputs } from '../../../shared/contract/types.ts';
import { merged } from '../../../shared/merge-fields.ts';
import { type PaperKind, paperKinds } from '../../../shared/papers.ts';
import type { MessageStep } from '../../../shared/wordings.ts';
import type { OpenShop, ShopContext } from '../../storage/context.ts';
import { getOrder } from '../orders/detail.ts';
import { oneLine } from '../orders/history.ts';
import { readOrder } from '../orders/order-row.ts';
import { getShop } from '../setup/shop.ts';
import { orderValues } from '../wordings/order-values.ts';
import { wordingNow } from '../wordings/stored.ts';
import { messageValues } from './values.ts';

/** Papers that usually go with a message, by name: those the shop does not print are left out. */
const goesAlong: Partial<Record<MessageStep, readonly string[]>> = {
  'request-taken': ['estimate'],
  'approval-asked': ['consent-form'],
  reminder: ['consent-form'],
  undershoot: ['consent-form'],
  'balance-due': ['receipt'],
  shipped: ['care-card', 'receipt'],
};

async function papersFor(shop: OpenShop, orderId: string, step: MessageStep): Promise<PaperKind[]> {
  const names = goesAlong[step] ?? [];
  const kinds = paperKinds.filter((kind) => names.includes(kind));
  if (!kinds.includes('consent-form')) return kinds;
  const { consents } = await getOrder(shop, orderId);
  const isWaiting = consents.some(({ state }) => state === 'waiting');
  return isWaiting ? kinds : kinds.filter((kind) => kind !== 'consent-form');
}

/** @see contract.messages.draft */
export async function draftMessage(
  ctx: ShopContext,
  { orderId, step }: ContractInputs['messages']['draft'],
): Promise<ContractOutputs['messages']['draft']> {
  const order = await getOrder(ctx, orderId);
  const values = {
    ...(await orderValues(ctx, await readOrder(ctx.read, orderId))),
    ...messageValues(order, await getShop(ctx)),
  };
  const { subject, body } = await wordingNow(ctx.read, `message:${step}`);
  return {
    toWhom: order.customer?.email ?? '',
    subject: oneLine(merged(subject, values), 300),
    body: merged(body, values).trimEnd(),
    papers: await papersFor(ctx, orderId, step),
  };
}
