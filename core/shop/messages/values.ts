import { consentLabels } from '../../../shared/consents.ts';
import type { OrderDetail } from '../../../shared/contract/orders.ts';
import type { ShopDetails } from '../../../shared/contract/setup.ts';
import { dollarText } from '../../../shared/money.ts';
import { undershootOfferLabels } from '../../../shared/undershoot.ts';
import type { MergeField } from '../../../shared/wordings.ts';
import { addressLines } from '../setup/address.ts';

const listed = (words: readonly string[]) =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1) ?? ''}`;

function weightWords({ readings }: OrderDetail): string {
  const times = readings.filter(({ struckReason }) => struckReason === null);
  const last = times.reduce<OrderDetail['readings'][number] | undefined>(
    (newest, each) => (newest === undefined || each.weighedAt > newest.weighedAt ? each : newest),
    undefined,
  );
  return last?.weights.map(({ text }) => text).join(', ') || 'not weighed yet';
}

function findingWords({ findings }: OrderDetail): string {
  const open = findings.filter(({ resolvedAt }) => resolvedAt === null);
  return open.map(({ place, note }) => `- ${place}: ${note}`).join('\n') || 'nothing of note';
}

function askedWords({ consents }: OrderDetail): string {
  const kinds = consents.filter(({ state }) => state === 'waiting').map(({ kind }) => kind);
  const names = [...new Set(kinds)].map((kind) => consentLabels[kind].toLowerCase());
  return listed(names) || 'nothing at the moment';
}

function offerWords({ undershoot }: OrderDetail): string {
  const offer = undershoot.offers.find(({ struckReason }) => struckReason === null);
  if (offer === undefined) return 'not said yet';
  const lower = -offer.priceChangeCents;
  const price = lower === 0 ? '' : `The price falls by ${dollarText(lower)}.`;
  return [undershootOfferLabels[offer.offer], offer.words, price]
    .filter((words) => words !== '')
    .join('\n');
}

function parcelWords({ shipments }: OrderDetail) {
  const out = shipments.find((each) => each.direction === 'out' && each.struckReason === null);
  return {
    carrier: out?.carrierName || 'the carrier',
    tracking: out?.tracking || 'not known yet',
  };
}

/** Values of the fields that messages use beyond those of every text. */
export function messageValues(
  order: OrderDetail,
  shop: ShopDetails,
): Record<
  Exclude<
    MergeField,
    'shop' | 'customer' | 'order' | 'bow' | 'subject' | 'work' | 'target' | 'total'
  >,
  string
> {
  const { balanceCents, depositCents } = order.price;
  return {
    balance: balanceCents === null ? 'not set yet' : dollarText(balanceCents),
    deposit: dollarText(depositCents),
    weight: weightWords(order),
    findings: findingWords(order),
    asked: askedWords(order),
    offer: offerWords(order),
    promised: order.promisedOn ?? 'not promised yet',
    ...parcelWords(order),
    reason: order.goingHomeReason || 'as we agreed',
    address: [shop.name, ...addressLines(shop.address)].join('\n'),
    phone: shop.phone,
    email: shop.email,
  };
}
