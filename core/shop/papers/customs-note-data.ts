import type { OrderDetail } from '../../../shared/contract/orders.ts';
import type { OrderPrice } from '../../../shared/contract/prices.ts';
import type { ShopDetails } from '../../../shared/contract/setup.ts';
import type { Shipment } from '../../../shared/contract/shipments.ts';
import { countryCode } from '../../../shared/countries.ts';
import { facingText } from '../../../shared/face-text.ts';
import { limbSetText } from '../../../shared/limb-set-text.ts';
import { dollarText, priceTotals } from '../../../shared/money.ts';
import { serviceLabels } from '../../../shared/stages.ts';
import type { CustomsNoteData, CustomsRow } from '../../papers/customs-note.ts';
import { sizeWords } from '../shipments/words.ts';
import { oneLine } from './one-line.ts';
import { countryOf, recipientOf } from './recipient.ts';
import { shopHead } from './shop-head.ts';

const speciesWords = {
  none: 'no wood or horn of a listed species, as recorded',
  listed: 'YES: wood or horn of a listed species',
  // Nobody looked: to be answered by hand, not taken for a no.
  unknown: '',
};

function bowRows({ bow, card, limbSet, cameAs }: OrderDetail): CustomsRow[] {
  const core = bow === null || bow.coreWood === '' ? '' : `, core ${bow.coreWood}`;
  const made = bow === null ? '' : `${bow.construction}, facing ${facingText(bow.faces)}${core}`;
  const what = cameAs === 'limbs-only' ? 'limbs of an archery bow' : 'archery bow, unstrung';
  return [
    ['What it is', bow === null ? '' : `Used ${what}: ${card.bowLine}`],
    ['Serial number', bow?.serial ?? ''],
    ...(limbSet === null ? [] : [['Limbs', limbSetText(limbSet)] satisfies CustomsRow]),
    ['Made of', made],
    ['Listed species (CITES)', bow === null ? '' : speciesWords[bow.listedSpecies]],
    ['Country it was made in', ''],
    ['Tariff number', ''],
  ];
}

function workRows(order: OrderDetail): CustomsRow[] {
  const { customer, arrival, card } = order;
  const work = order.services.map((service) => serviceLabels[service]).join(', ');
  return [
    ['Received for the work from', customer?.name ?? ''],
    ['Received on', arrival?.openedOn ?? ''],
    [
      'Work done',
      card.goingHome === null ? work : `asked for: ${work}; it goes back with this not done`,
    ],
  ];
}

/** Cents of the work with its tax, as if there were no return freight. */
function workCents(price: OrderPrice): number {
  const lines = price.lines.filter(({ kind }) => kind !== 'freight');
  return priceTotals(lines, price.taxRatePpm ?? 0).totalCents;
}

/** A price for work that was not done is no value of it. */
function repairValue({ card, price }: OrderDetail): string {
  if (card.goingHome !== null || price.totalCents === null) return '';
  return price.lines.length === 0
    ? `${dollarText(price.totalCents)}, the price as one amount`
    : `${dollarText(workCents(price))}, the price with its tax, without return freight`;
}

function declaredText(parcel: Shipment | undefined, direction: string): string | null {
  if (parcel === undefined || parcel.declaredCents === null) return null;
  const evidence = oneLine(parcel.valueEvidence);
  const proof = evidence === '' ? 'its evidence is not on record' : `evidence: ${evidence}`;
  return `${dollarText(parcel.declaredCents)}, declared ${direction}; ${proof}`;
}

/** Of the bow: as declared on its way home, else as declared when it came. */
function bowValue({ shipments }: OrderDetail): string {
  const standing = (direction: Shipment['direction']) =>
    shipments.find((each) => each.direction === direction && each.struckReason === null);
  return (
    declaredText(standing('out'), 'on this parcel') ??
    declaredText(standing('in'), 'when it was sent here') ??
    ''
  );
}

function parcelSize({ shipments }: OrderDetail): string {
  const out = shipments.find((each) => each.direction === 'out' && each.struckReason === null);
  if (out === undefined) return '';
  return sizeWords({
    shape: out.shape,
    length_in: out.lengthIn,
    width_in: out.widthIn,
    height_in: out.heightIn,
    weight_lb: out.weightLb,
  });
}

const isUnitedStates = (country: string) => countryCode(country) === 'US';

/**
 * The rules of other countries are theirs to say. For the United States the ones to ask about:
 * 19 CFR 10.8 (edition of 1 April 2002), which names HTSUS 9802.00.40 and 9802.00.50 and a
 * declaration of whoever did the work. The Lacey Act from memory.
 */
function cautionsOf(order: OrderDetail): string[] {
  const ask = isUnitedStates(countryOf(order))
    ? 'Ask a customs broker about goods returned to the United States after repair or alteration: 19 CFR 10.8 with HTSUS 9802.00.40 and 9802.00.50 asks for a declaration of whoever did the work.'
    : 'Ask a customs broker, or the customs of the country it goes to, about goods that return after repair, and whether the papers of its way here are asked for.';
  const species = order.bow?.listedSpecies ?? 'unknown';
  const listed =
    'Listed species: a permit may be needed at both borders under CITES, and in the United States a declaration under the Lacey Act. Ask the authority of both countries first: they decide, not the shop.';
  return [
    'Customs of either country decides what is asked and what is owed; the shop does not.',
    ask,
    ...(species === 'listed' ? [listed] : []),
    ...(species === 'unknown'
      ? [
          'Nobody has noted whether wood or horn of this bow is of a listed species (CITES). Find out before it crosses a border; the authority decides.',
        ]
      : []),
  ];
}

/** @throws ShopError UNPRINTABLE where there is no address to send it to */
export function customsNoteData(
  order: OrderDetail,
  shop: ShopDetails,
  choice: Pick<CustomsNoteData, 'format' | 'copy' | 'printedAt'>,
): CustomsNoteData {
  const isWorked = order.card.goingHome === null;
  return {
    ...choice,
    shop: shopHead(shop),
    number: order.card.number,
    to: recipientOf(order, shop),
    statement: [
      isWorked
        ? 'Returned after repair: this bow was sent in to be repaired or altered and goes back to its owner.'
        : 'Returned unrepaired: this bow was sent in to be repaired or altered and goes back to its owner with the work not done.',
      'It was not sold, and its owner does not change.',
      'This note goes with the customs form of the carrier and replaces none.',
    ],
    bow: bowRows(order),
    work: workRows(order),
    values: [
      ['Value of the repair', repairValue(order)],
      ['Value of the bow', bowValue(order)],
      // Amounts of the shop are dollars; which dollars only its country tells.
      ['Currency', isUnitedStates(shop.address.country) ? 'US dollars (USD)' : ''],
      ['Parcel, outside', parcelSize(order)],
    ],
    cautions: cautionsOf(order),
  };
}
