import type { MissingItem } from '../../../shared/gates.ts';

/** Address of the place on the order page where a missing item is put right. */
export function placeToFix(orderId: string, { section, opens }: MissingItem): string {
  const open = opens === null ? section : `${section}:${opens}`;
  return `/orders/${orderId}?open=${open}`;
}
