import type { OrderDetail } from '../../../shared/contract/orders.ts';
import type { ShopDetails } from '../../../shared/contract/setup.ts';
import { countryCode, isSameCountry } from '../../../shared/countries.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Party } from '../../papers/data.ts';
import { addressLines } from '../setup/address.ts';
import { nameOnPapers } from './shop-name.ts';

/**
 * Where the parcel goes.
 * @throws ShopError UNPRINTABLE where there is no address to print
 */
export function recipientOf(order: OrderDetail, shop: ShopDetails): Party {
  const { customer } = order;
  if (order.shipTo.trim() !== '') {
    const [name = '', ...lines] = order.shipTo.trim().split('\n');
    return { name, lines };
  }
  if (customer === null) return { name: nameOnPapers(shop), lines: addressLines(shop.address) };
  if (customer.address.street === '' || customer.address.city === '') {
    throw new ShopError(
      'UNPRINTABLE',
      `${customer.name} has no address yet. Add it, then print again.`,
      {
        address: 'Add street and town to the customer, or a ship-to address to the order.',
      },
    );
  }
  return { name: customer.name, lines: addressLines(customer.address) };
}

/** The country the parcel goes to, as written; empty where nobody wrote one. */
export function countryOf({ shipTo, customer }: Pick<OrderDetail, 'shipTo' | 'customer'>): string {
  const last = shipTo.trim().split('\n').at(-1)?.trim() ?? '';
  return countryCode(last) === null ? (customer?.address.country.trim() ?? '') : last;
}

/** The country where it is another one than the shop's; null where it is not, or nobody can tell. */
export function countryAbroad(
  order: Pick<OrderDetail, 'shipTo' | 'customer'>,
  shopCountry: string,
): string | null {
  const country = countryOf(order);
  if (country === '' || shopCountry.trim() === '') return null;
  return isSameCountry(country, shopCountry) ? null : country;
}
