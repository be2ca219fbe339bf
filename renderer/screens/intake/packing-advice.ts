import type { ShopDetails } from '../../../shared/contract/setup.ts';
import { moneyText } from '../../parts/days.ts';

interface AdviceFacts {
  number: string;
  estimateCents: number | null;
  shop: ShopDetails | null;
  addressLines: readonly string[];
}

/** How an unstrung bow travels safely: common practice, in words to send to the customer. */
const packing = [
  'Unstring the bow with a stringer. Take a take-down bow apart.',
  'Take off quiver, sight and anything that sticks out. Send the string you shoot, and your stringer.',
  'Wrap the whole bow, or each limb by itself, in two layers of soft padding; the tips twice.',
  'Use a stiff box or a tube a hand longer than the bow. Fill it so that nothing moves when you shake it.',
  'Close tubes with caps that are screwed or taped all round, not only pushed in.',
  'Put a slip inside with the order number, your name, address and phone, and a list of what is in the box.',
  'Photograph the bow and the packing. Insure it for what it is worth and send us the tracking number.',
  'Hand it over so that it does not lie in a hot car or over a weekend in a depot.',
];

/** Number, estimate and packing advice as one text to send. */
export function packingText({ number, estimateCents, shop, addressLines }: AdviceFacts): string {
  const to = [shop?.name ?? '', ...addressLines, shop?.phone ?? ''].filter((part) => part !== '');
  return [
    `Your order number is ${number}. Please write it on everything you send.`,
    estimateCents === null
      ? 'We send you the price before any work is done.'
      : `Estimate: ${moneyText(estimateCents)}. Anything beyond it is agreed with you first, with its cost.`,
    '',
    'How to pack the bow:',
    ...packing.map((line, index) => `${index + 1}. ${line}`),
    ...(to.length === 0 ? [] : ['', 'Send it to:', ...to]),
  ].join('\n');
}
