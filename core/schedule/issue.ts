import { refuseField } from '../../shared/errors.ts';
import { refuseUnlessAboveZero } from '../finish/refuse.ts';
import { less, onHand } from './stock.ts';

export interface Lot {
  id: string;
  /** Last day it may be used, `YYYY-MM-DD`; null for what does not expire. */
  expiresOn: string | null;
  /** `YYYY-MM-DD`. */
  receivedOn: string;
  /** In the unit the consumable is counted in. */
  onHand: number;
}

export interface Issue {
  /** What to take from which lot, in order. */
  picks: { lotId: string; quantity: number }[];
  /** What is missing; 0 where the stock is enough. */
  shortBy: number;
  /** Lots that hold some but have expired: to be set aside. */
  expiredLotIds: string[];
}

const day = /^\d{4}-\d{2}-\d{2}$/;

function refuseOddDay(field: string, value: string): void {
  if (!day.test(value)) refuseField(field, 'Enter the day as year, month and day.');
}

/**
 * Whether a lot may no longer be issued. Its last day is still good.
 * @param today the shop's day, `YYYY-MM-DD`.
 * @throws ShopError BAD_INPUT where a day cannot be read.
 */
export function expired({ expiresOn }: Pick<Lot, 'expiresOn'>, today: string): boolean {
  refuseOddDay('today', today);
  if (expiresOn === null) return false;
  refuseOddDay('expiresOn', expiresOn);
  return expiresOn < today;
}

/**
 * On hand in date, in the lots' unit: what counts for ordering more.
 * @throws ShopError BAD_INPUT where a day or an amount cannot be read.
 */
export function onHandInDate(lots: readonly Lot[], today: string): number {
  return onHand(
    lots
      .filter((lot) => !expired(lot, today))
      .map((lot) => ({ lotId: lot.id, quantity: lot.onHand })),
  );
}

/** What never expires sorts last. */
const noDay = '9999-12-31';

/** Order in which lots are used: by their last day, then by the day they came. */
export function usedBefore(a: Lot, b: Lot): number {
  const key = (lot: Lot) => `${lot.expiresOn ?? noDay} ${lot.receivedOn} ${lot.id}`;
  return key(a) < key(b) ? -1 : 1;
}

/**
 * First expired, first out: the lot that expires first is used first, whenever it came in; lots
 * past their day are left out, not taken first. Source of the rule: WHO, good distribution
 * practices, Annex 5.
 * @param quantity wanted, in the lots' unit.
 * @param today the shop's day, `YYYY-MM-DD`.
 * @throws ShopError BAD_INPUT where the quantity is not above 0 or a day cannot be read.
 */
export function firstExpiredFirstOut(lots: readonly Lot[], quantity: number, today: string): Issue {
  refuseUnlessAboveZero('quantity', quantity, 'The amount to take');
  const holding = lots.filter((lot) => lot.onHand > 0);
  const usable = holding.filter((lot) => !expired(lot, today)).sort(usedBefore);
  const picks: Issue['picks'] = [];
  let missing = quantity;
  for (const lot of usable) {
    if (missing <= 0) break;
    const taken = Math.min(lot.onHand, missing);
    picks.push({ lotId: lot.id, quantity: taken });
    missing = less(missing, taken);
  }
  return {
    picks,
    shortBy: Math.max(0, missing),
    expiredLotIds: holding.filter((lot) => expired(lot, today)).map((lot) => lot.id),
  };
}

/** The two sides of a two-part finish, each with its own lots and its own amount. */
export interface TwoPartWanted {
  resin: { lots: readonly Lot[]; quantity: number };
  hardener: { lots: readonly Lot[]; quantity: number };
}

export interface TwoPartIssue {
  resin: Issue;
  hardener: Issue;
  /** Why no batch can be mixed, one sentence each; empty where it can. */
  missing: string[];
}

function missingSentence(what: string, issue: Issue): string[] {
  if (issue.shortBy === 0) return [];
  if (issue.picks.length > 0) return [`There is not enough ${what} in date.`];
  return issue.expiredLotIds.length > 0
    ? [`All ${what} on hand has expired.`]
    : [`There is no ${what} on hand.`];
}

/**
 * Issues both sides of a two-part finish. The lots expire independently: fresh resin says nothing
 * about the hardener.
 * @throws ShopError BAD_INPUT as {@link firstExpiredFirstOut}.
 */
export function issueTwoPart({ resin, hardener }: TwoPartWanted, today: string): TwoPartIssue {
  const fromResin = firstExpiredFirstOut(resin.lots, resin.quantity, today);
  const fromHardener = firstExpiredFirstOut(hardener.lots, hardener.quantity, today);
  return {
    resin: fromResin,
    hardener: fromHardener,
    missing: [...missingSentence('resin', fromResin), ...missingSentence('hardener', fromHardener)],
  };
}
