import type { Pick as Picked } from '../../../shared/contract/stores.ts';
import { ShopError } from '../../../shared/errors.ts';
import { quantityText, type StockUnit } from '../../../shared/stores.ts';
import { expired, firstExpiredFirstOut, type Issue } from '../../schedule/issue.ts';
import type { CommandTransaction } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import type { StockedLot } from './stocked-lot.ts';
import { stockedLots } from './stocked-lot.ts';
import { readConsumable, readStockedLot, writeMove } from './write-move.ts';

export interface StockIssue {
  consumableId: string;
  /** In the unit the consumable is counted in. */
  quantity: number;
  /** The shop's day, `YYYY-MM-DD`. */
  today: string;
  orderId: string | null;
  /** A batch that was written before it, in the same command. */
  batchId: string | null;
  reason: string;
}

function pickedOf(lots: readonly StockedLot[], picks: Issue['picks']): Picked[] {
  return picks.flatMap(({ lotId, quantity }) => {
    const lot = lots.find(({ id }) => id === lotId);
    return lot === undefined
      ? []
      : [{ lotId, lotName: lot.name, quantity, lastDay: lot.expiresOn }];
  });
}

/** What would be taken, and the sentence that refuses it; null where it can be issued. */
export interface Reckoned {
  picks: Picked[];
  shortBy: number;
  expired: string[];
  sentence: string | null;
}

function shortSentence(
  name: string,
  unit: StockUnit,
  wanted: number,
  issue: Issue,
  expiredNames: readonly string[],
): string | null {
  if (issue.shortBy <= 0) return null;
  const there = issue.picks.reduce((sum, each) => sum + each.quantity, 0);
  const amount =
    there > 0
      ? `There is ${quantityText(there, unit)} of ${name} in date, not ${quantityText(wanted, unit)}.`
      : `There is no ${name} in date.`;
  if (expiredNames.length === 0) return `${amount} Receive more, or count what is there.`;
  const shown = expiredNames.slice(0, 4).join(', ');
  const lots = expiredNames.length === 1 ? `Lot ${shown} has` : `Lots ${shown} have`;
  return `${amount} ${lots} expired and may not be used: discard and receive more.`;
}

/** First expired, first out, over the lots of one consumable. */
export function reckonIssue(
  consumable: { name: string; unit: StockUnit },
  lots: readonly StockedLot[],
  quantity: number,
  today: string,
): Reckoned {
  const issue = firstExpiredFirstOut(lots, quantity, today);
  const names = issue.expiredLotIds.flatMap((id) => lots.find((lot) => lot.id === id)?.name ?? []);
  return {
    picks: pickedOf(lots, issue.picks),
    shortBy: issue.shortBy,
    expired: names,
    sentence: shortSentence(consumable.name, consumable.unit, quantity, issue, names),
  };
}

/**
 * Issues first expired, first out, inside the transaction of the caller's command.
 * @throws ShopError NOT_FOUND for an unknown consumable; CONFLICT, in a sentence that names what
 * is there, where there is not enough in date; BAD_INPUT where the quantity is not above 0.
 */
export async function issueFirstExpired(
  trx: CommandTransaction,
  ctx: ShopContext,
  issue: StockIssue,
): Promise<{ picks: Picked[] }> {
  const consumable = await readConsumable(trx, issue.consumableId);
  const lots = await stockedLots(trx.db, { consumableId: consumable.id });
  const { picks, sentence } = reckonIssue(consumable, lots, issue.quantity, issue.today);
  if (sentence !== null) {
    throw new ShopError('CONFLICT', sentence, {
      consumable: consumable.id,
      quantity: sentence,
    });
  }
  for (const picked of picks) {
    const lot = lots.find(({ id }) => id === picked.lotId);
    if (lot === undefined) continue;
    await writeMove(
      trx,
      ctx,
      { lot, consumable },
      {
        kind: 'issued',
        quantity: -picked.quantity,
        orderId: issue.orderId,
        batchId: issue.batchId,
        reason: issue.reason,
      },
    );
  }
  return { picks };
}

/**
 * Issues from one lot, as somebody holds it in the hand.
 * @throws ShopError NOT_FOUND; CONFLICT where it has expired or has not so much.
 */
export async function issueFromLot(
  trx: CommandTransaction,
  ctx: ShopContext,
  lotId: string,
  issue: StockIssue,
): Promise<{ picks: Picked[] }> {
  const { lot, consumable } = await readStockedLot(trx, lotId);
  if (consumable.id !== issue.consumableId) {
    throw new ShopError('BAD_INPUT', `Lot ${lot.name} is of ${consumable.name}, not of this.`, {
      lotId: `This is a lot of ${consumable.name}.`,
    });
  }
  if (expired(lot, issue.today)) {
    const sentence = `Lot ${lot.name} of ${consumable.name} could be used until ${lot.expiresOn} and may not be issued. Discard it and take another.`;
    throw new ShopError('CONFLICT', sentence, { lot: lot.id });
  }
  await writeMove(
    trx,
    ctx,
    { lot, consumable },
    {
      kind: 'issued',
      quantity: -issue.quantity,
      orderId: issue.orderId,
      batchId: issue.batchId,
      reason: issue.reason,
    },
  );
  return {
    picks: [{ lotId: lot.id, lotName: lot.name, quantity: issue.quantity, lastDay: lot.expiresOn }],
  };
}
