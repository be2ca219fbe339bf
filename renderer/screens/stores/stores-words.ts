import type { ConsumableSummary, Lot } from '../../../shared/contract/stores.ts';
import { gritWithSize } from '../../../shared/grit.ts';
import { decimal } from '../../../shared/measure.ts';
import { lotName, quantityText, type StockMark } from '../../../shared/stores.ts';
import { fullDay } from '../../parts/days.ts';
import type { MarkKind } from '../../parts/mark.tsx';

/** Shape that goes with the word: what may not be used stops, the rest asks for somebody. */
export const markKinds: Readonly<Record<StockMark, MarkKind>> = {
  out: 'stop',
  expired: 'stop',
  order: 'attention',
  expiring: 'attention',
};

export function coverageText(weeks: number | null): string {
  if (weeks === null) return '';
  if (weeks < 1) return 'under a week left';
  if (weeks > 104) return 'over two years left';
  const told = decimal(weeks, weeks < 10 ? 1 : 0);
  return told === '1' ? '1 week left' : `${told} weeks left`;
}

/** Grit, shelf, next expiry and how long it lasts, in a line. */
export function summaryLine(each: ConsumableSummary): string {
  const parts = [
    each.grit === null ? '' : gritWithSize(each.grit),
    each.shelf,
    each.nextLastDay === null ? '' : `next use by ${fullDay(each.nextLastDay)}`,
    coverageText(each.coverageWeeks),
    each.onOrder > 0 ? `${quantityText(each.onOrder, each.unit)} on order` : '',
    each.active ? '' : 'put away',
  ];
  return parts.filter((part) => part !== '').join(', ');
}

/** `Lot R-118, use by 30 Sep`. */
export function lotText(lot: Pick<Lot, 'number' | 'receivedOn' | 'lastDay'>): string {
  const until = lot.lastDay === null ? 'no last day' : `use by ${fullDay(lot.lastDay)}`;
  return `Lot ${lotName(lot)}, ${until}`;
}
