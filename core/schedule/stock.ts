import { refuseField } from '../../shared/errors.ts';

/** A change of stock, in the unit the consumable is counted in: in above 0, out below. */
export interface StockMove {
  lotId: string;
  quantity: number;
}

/** Sums of decimal amounts without binary dust: six decimals are finer than any scale here. */
function clean(sum: number): number {
  return Number(sum.toFixed(6)) + 0;
}

/**
 * What is on hand: the sum of the moves, in their own unit. Below 0 where more was taken than was
 * ever booked in; that is for a person to count and correct, so it is told as it is.
 * @throws ShopError BAD_INPUT where a move is not a number.
 */
export function onHand(moves: readonly StockMove[]): number {
  return clean(
    moves.reduce((sum, { quantity }) => {
      if (!Number.isFinite(quantity))
        refuseField('quantity', 'An amount in the stock is not a number.');
      return sum + quantity;
    }, 0),
  );
}

/** On hand lot by lot; a lot with no move is not in it. @throws ShopError as {@link onHand}. */
export function onHandByLot(moves: readonly StockMove[]): Map<string, number> {
  const byLot = Map.groupBy(moves, (move) => move.lotId);
  return new Map([...byLot].map(([lotId, own]) => [lotId, onHand(own)]));
}

/** Takes one amount from another without binary dust. */
export function less(amount: number, taken: number): number {
  return clean(amount - taken);
}
