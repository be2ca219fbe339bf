import type { OrderPrice, PriceLine, PriceService } from '../../../../shared/contract/prices.ts';
import { discountText, dollarText, priceLineKindLabels } from '../../../../shared/money.ts';
import type { Service } from '../../../../shared/stages.ts';

/** How the price stands, in a few words. */
export function priceState({ totalCents, balanceCents }: OrderPrice): string {
  if (totalCents === null || balanceCents === null) return 'not set';
  const total = dollarText(totalCents);
  if (balanceCents < 0) return `${total}, ${dollarText(-balanceCents)} paid too much`;
  if (balanceCents === 0) return `${total}, paid`;
  return `${total}, ${dollarText(balanceCents)} still to be paid`;
}

/** What stands under a line's name. */
export function lineWords(line: PriceLine, hasTax: boolean): string {
  const kind = priceLineKindLabels[line.kind];
  const words = [
    line.kind === 'service' || kind === line.what ? '' : kind,
    line.discountBp === null ? '' : `${discountText(line.discountBp)} of what stands above`,
    line.quantity > 1 ? `${line.quantity} at ${dollarText(line.unitCents)}` : '',
    hasTax && !line.taxable && line.kind !== 'discount' ? 'not taxed' : '',
    line.minutes > 0 ? `${line.minutes} min` : '',
  ];
  return words.filter((each) => each !== '').join(', ');
}

/** Lines of the list that belong to the services asked and are not on the order yet. */
export function suggestedServices(
  list: readonly PriceService[],
  asked: readonly Service[],
  lines: readonly PriceLine[],
): PriceService[] {
  const there = new Set(lines.map(({ priceServiceId }) => priceServiceId));
  return list.filter(
    ({ id, active, service }) =>
      active && service !== null && asked.includes(service) && !there.has(id),
  );
}

/** The ids with one of them moved by a place; the same list where it is at the end already. */
export function movedBy(ids: readonly string[], id: string, by: -1 | 1): string[] {
  const at = ids.indexOf(id);
  const to = at + by;
  if (at < 0 || to < 0 || to >= ids.length) return [...ids];
  const rest = ids.filter((each) => each !== id);
  return [...rest.slice(0, to), id, ...rest.slice(to)];
}
