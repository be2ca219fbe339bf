import type { RoomBow } from '../../../shared/contract/finish.ts';
import { recoatStateLabels } from '../../../shared/finish.ts';
import type { MarkKind } from '../../parts/mark.tsx';

export interface WindowWords {
  kind: MarkKind;
  text: string;
}

/** How many coats are on, and how many the sheet asks for: `1 of 2 to 4 coats on`. */
export function coatsText({ coatsOn, coatsFrom, coatsTo }: RoomBow): string {
  if (coatsFrom === null || coatsTo === null) return `${coatsOn} coats on`;
  const wanted = coatsFrom === coatsTo ? String(coatsFrom) : `${coatsFrom} to ${coatsTo}`;
  return `${coatsOn} of ${wanted} coats on`;
}

/** Whether a coat may follow now, in words; a bow without a coat waits for its first one. */
export function windowWords(bow: Pick<RoomBow, 'window' | 'finishSystemId'>): WindowWords {
  if (bow.finishSystemId === null) return { kind: 'attention', text: 'No finish chosen.' };
  const { window } = bow;
  if (window === null) return { kind: 'done', text: 'Ready for its first coat.' };
  switch (window.state) {
    case 'open':
      return { kind: 'done', text: window.sentence };
    case 'scuff':
      return { kind: 'attention', text: window.sentence };
    case 'before':
      return { kind: 'attention', text: window.sentence };
    case 'closed':
    case 'off-sheet':
      return { kind: 'stop', text: `${recoatStateLabels[window.state]}. ${window.sentence}` };
  }
}

/** A coat may go on now, scuffed or not. */
export const isReady = ({ window, finishSystemId }: Pick<RoomBow, 'window' | 'finishSystemId'>) =>
  finishSystemId !== null &&
  (window === null || window.state === 'open' || window.state === 'scuff');

const noEnd = '9';

/**
 * Bows in the order they are coated: those whose window shuts soonest, those that are open, those
 * that open soonest, and last what no window can be told of.
 */
export function byUrgency(bows: readonly RoomBow[]): RoomBow[] {
  const rank = (bow: RoomBow) => {
    if (bow.window === null) return bow.finishSystemId === null ? 3 : 1;
    if (isReady(bow)) return bow.window.closesAt === null ? 1 : 0;
    return bow.window.state === 'before' ? 2 : 3;
  };
  const when = ({ window }: RoomBow) => window?.closesAt ?? window?.opensAt ?? noEnd;
  return bows.toSorted(
    (a, b) =>
      rank(a) - rank(b) || when(a).localeCompare(when(b)) || a.number.localeCompare(b.number),
  );
}
