import type { OpenShop } from '../../../core/storage/context.ts';
import type { StockUnit } from '../../../shared/stores.ts';

/** One US fluid ounce in millionths of a millilitre, from 231 in3 and 25.4 mm by hand: exact. */
const flOzMicro = 29_573_529.5625;

interface LedgerLot {
  lotId: string;
  consumableId: string;
  unit: StockUnit;
}

const micro = (quantity: number) => Math.round(quantity * 1e6);

function received(quantity: number, given: StockUnit, counted: StockUnit): number {
  if (given === counted) return micro(quantity);
  const inMl = given === 'fl oz' ? quantity * flOzMicro : quantity * 1e6;
  return counted === 'mL' ? Math.round(inMl) : Math.round((inMl / flOzMicro) * 1e6);
}

/**
 * What the clients were told, added up in whole millionths by other means than the program's: an
 * answer that does not agree with what was written shows.
 */
export class Ledger {
  readonly #lots = new Map<string, LedgerLot>();
  /** As it was converted by hand; a tie may be rounded either way. */
  readonly #came = new Map<string, number>();
  /** What was written when it came, once that was compared; and what the clients took since. */
  readonly #micro = new Map<string, number>();

  received(lot: LedgerLot, quantity: number, given: StockUnit): void {
    this.#lots.set(lot.lotId, lot);
    this.#came.set(lot.lotId, received(quantity, given, lot.unit));
  }

  moved(lotId: string, quantity: number): void {
    this.#micro.set(lotId, (this.#micro.get(lotId) ?? 0) + micro(quantity));
  }

  lotsOf(consumableId: string): string[] {
    return [...this.#lots.values()]
      .filter((lot) => lot.consumableId === consumableId)
      .map(({ lotId }) => lotId);
  }

  get size(): number {
    return this.#lots.size;
  }

  /** Where the shop's moves do not say what the clients were told, or say less than nothing. */
  async broken(shop: OpenShop): Promise<string[]> {
    const moves = await shop.read.selectFrom('stock_move').selectAll().execute();
    const sums = new Map<string, number>();
    const troubles: string[] = [];
    for (const move of moves) {
      const sum = (sums.get(move.lot_id) ?? 0) + micro(move.quantity);
      if (sum < 0) troubles.push(`lot ${move.lot_id} was at ${sum} millionths`);
      sums.set(move.lot_id, sum);
      if (move.kind === 'received') troubles.push(...this.#arrive(move));
      const lot = this.#lots.get(move.lot_id);
      if (lot !== undefined && lot.consumableId !== move.consumable_id) {
        troubles.push(`move ${move.id} is of another consumable than its lot`);
      }
    }
    for (const [lotId, told] of this.#micro) {
      const sum = sums.get(lotId) ?? 0;
      if (sum !== told) troubles.push(`lot ${lotId}: moves ${sum}, clients were told ${told}`);
    }
    return troubles;
  }

  #arrive(move: { lot_id: string; quantity: number }): string[] {
    const came = this.#came.get(move.lot_id);
    if (came === undefined) return [];
    this.#came.delete(move.lot_id);
    const written = micro(move.quantity);
    this.moved(move.lot_id, move.quantity);
    return Math.abs(written - came) <= 1
      ? []
      : [`lot ${move.lot_id}: ${written} came, not ${came}`];
  }

  /** Where what a screen is shown is not the sum of the moves. */
  shownWrongly(lots: readonly { id: string; onHand: number }[]): string[] {
    return lots
      .filter(({ id, onHand }) => micro(onHand) !== (this.#micro.get(id) ?? 0))
      .map(({ id, onHand }) => `lot ${id} is shown as ${onHand}`);
  }
}
