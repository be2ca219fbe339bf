import type { ShoppingItem } from '../../../shared/contract/stores.ts';
import { quantityText } from '../../../shared/stores.ts';

/** How much to buy, in words. */
export function wantedText({ quantity, unit }: Pick<ShoppingItem, 'quantity' | 'unit'>): string {
  return quantity === null ? 'as much as you see fit' : quantityText(quantity, unit);
}

/** The list as plain text, to paste into a message or an order form. */
export function shoppingText(items: readonly ShoppingItem[], day: string): string {
  const lines = items.map((item) => `- ${item.name}: ${wantedText(item)}`);
  return [`Shopping list, ${day}`, ...lines].join('\n');
}
