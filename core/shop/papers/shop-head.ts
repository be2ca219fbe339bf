import type { ShopDetails } from '../../../shared/contract/setup.ts';
import type { Party } from '../../papers/data.ts';
import { addressLines } from '../setup/address.ts';
import { nameOnPapers } from './shop-name.ts';

/** The shop as it stands at the head of a paper. */
export function shopHead(shop: ShopDetails): Party & { phone: string; email: string } {
  return {
    name: nameOnPapers(shop),
    lines: addressLines(shop.address),
    phone: shop.phone,
    email: shop.email,
  };
}

/**
 * Whether a bow may not be strung, as far as anybody wrote down: whoever said that it is broken may
 * not have written it down as a finding.
 */
export function isUnsafe({
  openStops,
  goingHome,
}: {
  openStops: number;
  goingHome: string | null;
}): boolean {
  return openStops > 0 || goingHome === 'broken';
}
