import type { OrderCard } from '../../../shared/contract/order-card.ts';
import { roomOf } from '../../../shared/stages.ts';

/**
 * Bows to choose from at the bench: those whose stage is worked there, then those that come next;
 * with digits keyed in, only the numbers they fit, wherever the order stands.
 */
export function bowsToChoose(cards: readonly OrderCard[], digits: string): OrderCard[] {
  const wanted = digits.replaceAll(/\D/g, '');
  const fitting = cards.filter((card) =>
    wanted === ''
      ? roomOf[card.stage] === 'bench' || card.stage === 'agreed'
      : fitsNumber(card.number, wanted),
  );
  const rank = (card: OrderCard) => (roomOf[card.stage] === 'bench' ? 0 : 1);
  return fitting.sort((a, b) => rank(a) - rank(b) || a.number.localeCompare(b.number));
}

/** `147` and `0147` fit 26-0147, and so does `260147`; `26` alone is too little to tell a year. */
function fitsNumber(number: string, digits: string): boolean {
  const [, last = ''] = number.split('-');
  return Number(last) === Number(digits) || last === digits || number.replace('-', '') === digits
    ? true
    : last.endsWith(digits) && digits.length > 1;
}
