import type { OrderDetail } from '../../../shared/contract/orders.ts';
import type { ShopDetails } from '../../../shared/contract/setup.ts';
import type { ShippingTagData } from '../../papers/data.ts';
import { dollars } from '../consents/subject.ts';
import { addressLines } from '../setup/address.ts';
import { sizeWords } from '../shipments/words.ts';
import { recipientOf } from './recipient.ts';
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
    to: recipientOf(order, shop),
    contents: shop.contentsOnTag ? 'Archery bow, unstrung' : null,
    ...parcelLines(order),
  };
}
