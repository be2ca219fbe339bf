import type { OrderDetail } from '../../../shared/contract/orders.ts';
import type { ShopDetails } from '../../../shared/contract/setup.ts';
import { limbSetText } from '../../../shared/limb-set-text.ts';
import { paperChoices } from '../../../shared/papers.ts';
import type { PackingListData } from '../../papers/packing-list.ts';
import { dayOf } from '../day.ts';
import { oneLine } from './one-line.ts';
import { isUnsafe, shopHead } from './shop-head.ts';

type Item = PackingListData['items'][number];

function bowItem({ bow, card, cameAs, limbSet }: OrderDetail): Item {
  const line = bow === null ? 'Bow, not identified' : card.bowLine;
  const limbs = limbSet === null ? '' : limbSetText(limbSet);
  return {
    what: cameAs === 'limbs-only' ? `Limbs only, of: ${line}` : line,
    about: limbs === '' ? 'unstrung' : `${limbs}, unstrung`,
  };
}

function belongingItems({ belongings }: OrderDetail): Item[] {
  return belongings.map(({ what, backAt }) => ({
    what: oneLine(what),
    about: backAt === null ? 'came with the bow' : `laid back ${dayOf(backAt)}`,
  }));
}

/** Papers the customer gets that went out for this order, each once, as printed last. */
function paperItems({ papers }: OrderDetail): Item[] {
  const newest = papers
    .filter(({ copy }) => copy === 'customer')
    .toSorted((a, b) => (a.madeAt < b.madeAt ? 1 : -1));
  const kinds = [...new Set(newest.map(({ kind }) => kind))];
  return kinds.map((kind) => {
    const madeAt = newest.find((paper) => paper.kind === kind)?.madeAt ?? '';
    return { what: `Paper: ${paperChoices[kind].label.toLowerCase()}`, about: dayOf(madeAt) };
  });
}

function cautionsOf(order: OrderDetail): string[] {
  const first = isUnsafe(order.card)
    ? 'DO NOT STRING OR DRAW this bow. What was found stands on the tag tied to it.'
    : 'Look the bow over before you string it, and let it reach the temperature of the room first.';
  return [
    first,
    'Keep box and packing until you have looked at everything: a carrier asks for them after damage. Photograph damage at once.',
    'Something missing? Tell us the order number above.',
  ];
}

export function packingListData(
  order: OrderDetail,
  shop: ShopDetails,
  choice: Pick<PackingListData, 'format' | 'copy' | 'printedAt'>,
): PackingListData {
  return {
    ...choice,
    shop: shopHead(shop),
    number: order.card.number,
    customerName: order.customer?.name ?? '',
    items: [bowItem(order), ...belongingItems(order), ...paperItems(order)],
    cautions: cautionsOf(order),
  };
}
