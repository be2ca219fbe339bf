import type { ShopDetails } from '../../../shared/contract/setup.ts';

/** The shop as papers name it: those of the demo shop say so wherever its name stands. */
export function nameOnPapers(shop: Pick<ShopDetails, 'name' | 'isDemo'>): string {
  return shop.isDemo ? `DEMO - ${shop.name}` : shop.name;
}
