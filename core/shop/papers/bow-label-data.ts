import type { OrderDetail } from '../../../shared/contract/orders.ts';
import type { ShopDetails } from '../../../shared/contract/setup.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { BowLabelData } from '../../papers/bow-label.ts';
import type { OpenShop } from '../../storage/context.ts';
import { dayOf } from '../day.ts';
import { readFacts } from '../gates/facts.ts';
import { missingAt } from '../gates/gates.ts';
import { readOrder } from '../orders/order-row.ts';
import { addressLines } from '../setup/address.ts';
import { approvalNow, bowLineOf, lettered } from './inscription-proof-data.ts';
import { nameOnPapers } from './shop-name.ts';

/** What the lettering gate says of the words themselves; its other needs are about the bench. */
const aboutWords: readonly string[] = ['inscription', 'inscription-weight', 'marking-approval'];

/**
 * A guide or label that is not approved would be lettered all the same: the proof is the paper to
 * show before.
 * @throws ShopError UNPRINTABLE
 */
async function refuseUnapproved(db: OpenShop['read'], orderId: string, now: string): Promise<void> {
  const facts = await readFacts(db, await readOrder(db, orderId), now);
  const [trouble] = missingAt('lettering', facts).filter(({ item }) => aboutWords.includes(item));
  if (trouble === undefined) return;
  throw new ShopError(
    'UNPRINTABLE',
    `Nothing to letter yet: ${trouble.sentence} Print the inscription proof until then.`,
    { [trouble.item]: trouble.sentence },
  );
}

function approvalText(order: OrderDetail): string {
  const answer = approvalNow(order)?.answers.at(-1);
  if (order.customer === null || answer === undefined) return "The shop's own bow.";
  return `Approved word for word by ${answer.answeredBy} on ${dayOf(answer.answeredAt)}.`;
}

/** What goes on the lettering guide or the label: the lines as approved, and nothing else. */
export async function bowLabelData(
  db: OpenShop['read'],
  order: OrderDetail,
  shop: ShopDetails,
  choice: { format: BowLabelData['format']; printedAt: string },
): Promise<BowLabelData> {
  await refuseUnapproved(db, order.card.id, choice.printedAt);
  return {
    format: choice.format,
    printedAt: choice.printedAt,
    printedOn: dayOf(choice.printedAt),
    number: order.card.number,
    shop: { name: nameOnPapers(shop), lines: addressLines(shop.address) },
    bowLine: await bowLineOf(db, order.card.id),
    position: order.inscriptionLayout?.position ?? 'not said yet',
    makerMark: order.inscriptionLayout?.makerMark ?? '',
    ...lettered(order),
    approval: approvalText(order),
  };
}
