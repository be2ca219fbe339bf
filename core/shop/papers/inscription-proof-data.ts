import { consentStateLabels } from '../../../shared/consents.ts';
import type { OrderDetail } from '../../../shared/contract/orders.ts';
import type { ShopDetails } from '../../../shared/contract/setup.ts';
import { ShopError } from '../../../shared/errors.ts';
import {
  letteringMannerLabels,
  letteringSurfaceLabels,
  usualLetterHeightIn,
} from '../../../shared/inscription.ts';
import { decimal } from '../../../shared/measure.ts';
import type { InscriptionProofData } from '../../papers/inscription-proof.ts';
import type { OpenShop } from '../../storage/context.ts';
import { bowLine } from '../bows/bow-line.ts';
import { dayOf } from '../day.ts';
import { outlinesOf } from '../inscriptions/outlines.ts';
import { readOrder } from '../orders/order-row.ts';
import { addressLines } from '../setup/address.ts';
import { nameOnPapers } from './shop-name.ts';

/** Lines as they stand on the order; trailing empty ones letter nothing. */
export function lettered(order: OrderDetail): { lines: string[]; letterHeightIn: number } {
  const lines = order.inscription.trimEnd().split('\n');
  if (order.inscription.trim() === '') {
    throw new ShopError('UNPRINTABLE', 'There are no lines yet: write them on the order first.', {
      inscription: 'Write the lines first.',
    });
  }
  return {
    lines: lines.map((line) => line.trimEnd()),
    letterHeightIn: order.inscriptionLayout?.letterHeightIn ?? usualLetterHeightIn,
  };
}

export async function bowLineOf(db: OpenShop['read'], orderId: string): Promise<string> {
  const order = await readOrder(db, orderId);
  const bow = await db
    .selectFrom('bow')
    .selectAll()
    .where('id', '=', order.bow_id ?? '')
    .executeTakeFirst();
  return bow === undefined ? 'Bow not identified yet' : bowLine(bow);
}

export function approvalNow(order: OrderDetail) {
  return order.consents.find((consent) => consent.kind === 'marking-approval');
}

/** Where the approval stands, said so that no reply never reads as yes. */
function answerText(order: OrderDetail): string {
  if (order.customer === null) return 'The bow is the shop’s own: nobody is asked.';
  const asked = approvalNow(order);
  if (asked === undefined) return 'Not asked yet.';
  const last = asked.answers.at(-1);
  const state = consentStateLabels[asked.state];
  if (last === undefined) return `Asked ${dayOf(asked.askedAt)}: ${state.toLowerCase()}.`;
  return `Asked ${dayOf(asked.askedAt)}, answered ${dayOf(last.answeredAt)} by ${last.answeredBy}: ${state.toLowerCase()}.`;
}

/** Where the lines stand and how they are put on. */
export function layoutFacts({ inscriptionLayout: layout }: OrderDetail): [string, string][] {
  if (layout === null) {
    return [['Where', 'Not said yet: ask where the lines shall stand.']];
  }
  const rows: [string, string][] = [
    ['Where', layout.position],
    ["Maker's own mark", layout.makerMark],
    ['Surface', letteringSurfaceLabels[layout.surface]],
    ['How', letteringMannerLabels[layout.manner]],
    ['Ink', layout.ink],
    ['Height of a capital', `${decimal(layout.letterHeightIn, 3)} in`],
  ];
  return rows.filter(([, value]) => value !== '');
}

/** What goes on the proof for the customer. */
export async function inscriptionProofData(
  db: OpenShop['read'],
  order: OrderDetail,
  shop: ShopDetails,
  choice: { format: 'letter' | 'a4'; printedAt: string },
): Promise<InscriptionProofData> {
  const outlines = await outlinesOf(db, await readOrder(db, order.card.id));
  const isLower = /\blower\b/i.test(order.inscriptionLayout?.position ?? '');
  const limb = outlines.find((each) => each.limb === (isLower ? 'lower' : 'upper')) ?? null;
  return {
    format: choice.format,
    printedAt: choice.printedAt,
    printedOn: dayOf(choice.printedAt),
    number: order.card.number,
    shop: { name: nameOnPapers(shop), lines: addressLines(shop.address) },
    customerName: order.customer?.name ?? null,
    bowLine: await bowLineOf(db, order.card.id),
    ...lettered(order),
    facts: layoutFacts(order),
    oldMarking: order.inscriptionLayout?.oldMarking ?? '',
    limb: limb === null ? null : { name: `${limb.limb} limb`, stations: limb.stations },
    answer: answerText(order),
  };
}
