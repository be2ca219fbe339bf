import type { Entry } from '../../../shared/contract/entries.ts';
import type { OrderDetail } from '../../../shared/contract/orders.ts';
import type { EntryItem } from '../../../shared/entries.ts';

/** What the customer is told of the finish. Days as `YYYY-MM-DD`; null where nothing stands. */
export interface FinishFacts {
  /** Which finish, in the words of whoever chose it. */
  finish: string | null;
  lastCoatOn: string | null;
  /** When it was found ready to string, and by what. */
  strung: { on: string; words: string } | null;
  safeToWrap: { on: string; words: string } | null;
  /** When it is fully cured, as recorded. */
  cured: { on: string; words: string } | null;
}

const oneLine = (note: string) => note.trim().replaceAll(/\s+/g, ' ');

/** Newest entry that stands, if it says that all is well: a later "not ok" takes an earlier one back. */
function standing(entries: readonly Entry[], items: readonly EntryItem[]): Entry | null {
  const newest = entries
    .filter(({ item, struckReason }) => items.includes(item) && struckReason === null)
    .toSorted((a, b) => (a.recordedAt < b.recordedAt ? 1 : -1))[0];
  return newest?.outcome === 'ok' ? newest : null;
}

const dated = (entry: Entry | null) =>
  entry === null ? null : { on: entry.doneOn, words: oneLine(entry.note) };

/** The one place where papers learn of the finish: from the dated notes of the finish room. */
export function finishFacts({ entries }: Pick<OrderDetail, 'entries'>): FinishFacts {
  const system = standing(entries, ['finish-system']);
  return {
    finish: system === null ? null : oneLine(system.note),
    lastCoatOn: standing(entries, ['coat', 'first-clear'])?.doneOn ?? null,
    strung: dated(standing(entries, ['string-and-flex'])),
    safeToWrap: dated(standing(entries, ['safe-to-wrap'])),
    // No note says it; the sheet of the finish does.
    cured: null,
  };
}
