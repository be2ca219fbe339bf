import type { OrderDetail } from '../../../shared/contract/orders.ts';
import type { ShopDetails } from '../../../shared/contract/setup.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Party, ShippingTagData } from '../../papers/data.ts';
import { dollars } from '../consents/subject.ts';
import { addressLines } from '../setup/address.ts';
import { sizeWords } from '../shipments/words.ts';
import { nameOnPapers } from './shop-name.ts';

/** Carrier and box of the parcel on its way out; private to the shop but for carrier and tracking. */
function parcelLines(
  order: OrderDetail,
): Pick<ShippingTagData, 'carrier' | 'declaredValue' | 'box'> {
  const parcel = order.shipments.find(
    (each) => each.direction === 'out' && each.struckReason === null,
  );
  if (parcel === undefined) {
    // Orders from before parcels were recorded have notes of them.
    return {
      carrier: noteOf(order, 'tracking'),
      declaredValue: null,
      box: noteOf(order, 'carrier-limits'),
    };
  }
  const tracking = parcel.tracking === '' ? '' : `tracking ${parcel.tracking}`;
  const size = sizeWords({
    shape: parcel.shape,
    length_in: parcel.lengthIn,
    width_in: parcel.widthIn,
    height_in: parcel.heightIn,
    weight_lb: parcel.weightLb,
  });
  const carrier = [parcel.carrierName, tracking].filter((part) => part !== '').join(', ');
  return {
    carrier: carrier === '' ? null : carrier,
    declaredValue: parcel.declaredCents === null ? null : dollars(parcel.declaredCents),
    box: size === '' ? null : size,
  };
}

function noteOf(order: OrderDetail, item: 'tracking' | 'carrier-limits'): string | null {
  const entry = order.entries.find(
    (row) => row.item === item && row.struckReason === null && row.outcome === 'ok',
  );
  return entry === undefined || entry.note === '' ? null : entry.note.replaceAll('\n', ' ');
}

/** @throws ShopError UNPRINTABLE where there is no address to print. */
function recipient(order: OrderDetail, shop: ShopDetails): Party {
  const { customer } = order;
  if (order.shipTo.trim() !== '') {
    const [name = '', ...lines] = order.shipTo.trim().split('\n');
    return { name, lines };
  }
  if (customer === null) return { name: nameOnPapers(shop), lines: addressLines(shop.address) };
  if (customer.address.street === '' || customer.address.city === '') {
    throw new ShopError(
      'UNPRINTABLE',
      `${customer.name} has no address yet. Add it, then print the tag.`,
      {
        address: 'Add street and town to the customer, or a ship-to address to the order.',
      },
    );
  }
  return { name: customer.name, lines: addressLines(customer.address) };
}

export function shippingTagData(
  order: OrderDetail,
  shop: ShopDetails,
  choice: { format: ShippingTagData['format']; copy: ShippingTagData['copy']; printedAt: string },
): ShippingTagData {
  return {
    ...choice,
    number: order.card.number,
    from: {
      name: nameOnPapers(shop),
      lines: [...addressLines(shop.address), shop.phone].filter((line) => line !== ''),
    },
    to: recipient(order, shop),
    contents: shop.contentsOnTag ? 'Archery bow, unstrung' : null,
    ...parcelLines(order),
    // Whoever said that the bow is broken may not have written it down as a finding.
    unsafe: order.card.openStops > 0 || order.card.goingHome === 'broken',
  };
}
