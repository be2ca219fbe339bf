import type { Entry } from '../../../shared/contract/entries.ts';
import type { OrderDetail } from '../../../shared/contract/orders.ts';
import type { EntryItem } from '../../../shared/entries.ts';
import type { CureStep } from '../../../shared/finish.ts';
import { dayOf, firstWholeDayFrom } from '../day.ts';
import { oneLine } from './one-line.ts';

/** A day and what it rests on. */
interface DatedWords {
  on: string;
  words: string;
}

/** What the customer is told of the finish. Days as `YYYY-MM-DD`; null where nothing stands. */
export interface FinishFacts {
  /** Which finish: as chosen, with its sheet, or in the words of whoever noted it. */
  finish: string | null;
  lastCoatOn: string | null;
  /** From which day on it may be strung; by the sheet, or as it was found. */
  strung: DatedWords | null;
  safeToWrap: DatedWords | null;
  cured: DatedWords | null;
}

type Told = Pick<OrderDetail, 'entries' | 'finish'>;

/** Newest entry that stands: a later "not ok" takes an earlier one back. */
function newest(entries: readonly Entry[], items: readonly EntryItem[]): Entry | null {
  const standing = entries.filter(
    ({ item, struckReason }) => items.includes(item) && struckReason === null,
  );
  return standing.toSorted((a, b) => (a.recordedAt < b.recordedAt ? 1 : -1))[0] ?? null;
}

function said(entry: Entry | null): DatedWords | null {
  return entry?.outcome === 'ok' ? { on: entry.doneOn, words: oneLine(entry.note) } : null;
}

/**
 * By the sheet, counted from the last coat; what somebody noted since then counts more, and where
 * there is no coat on record the note is all there is.
 */
function passed({ entries, finish }: Told, step: CureStep, item: EntryItem | null) {
  const { lastCoatAt } = finish;
  const noted = item === null ? null : newest(entries, [item]);
  if (lastCoatAt === null || (noted !== null && noted.recordedAt > lastCoatAt)) return said(noted);
  const time = finish.cure.find((each) => each.step === step);
  if (time === undefined) return null;
  const words = `by its data sheet, last coat on ${dayOf(lastCoatAt)}`;
  return { on: firstWholeDayFrom(time.at), words };
}

function finishName({ entries, finish }: Told): string | null {
  if (finish.chosen !== null) {
    const { name, revision, datedOn } = finish.chosen.sheet;
    return `${name}, data sheet ${revision} of ${datedOn}`;
  }
  const coat = finish.coats.find((each) => each.struckReason === null && each.purpose !== 'seal');
  return coat?.systemName ?? said(newest(entries, ['finish-system']))?.words ?? null;
}

/** The one place where papers learn of the finish: its records first, then older dated notes. */
export function finishFacts(order: Told): FinishFacts {
  const { entries, finish } = order;
  const noted = said(newest(entries, ['coat', 'first-clear']))?.on ?? null;
  return {
    finish: finishName(order),
    lastCoatOn: finish.lastCoatAt === null ? noted : dayOf(finish.lastCoatAt),
    strung: passed(order, 'stringAndFlex', 'string-and-flex'),
    safeToWrap: passed(order, 'wrap', 'safe-to-wrap'),
    cured: passed(order, 'full', null),
  };
}

/** Who put the finish on, or noted it, each once. */
export function finishers({ entries, finish }: Told): string[] {
  const coaters = finish.coats.filter((each) => each.struckReason === null);
  const noting = entries.filter(
    ({ item, struckReason }) => item === 'finish-system' && struckReason === null,
  );
  return [...new Set([...coaters, ...noting].map(({ personName }) => personName))];
}
