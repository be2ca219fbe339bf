import type { Bow } from '../../../shared/contract/bows.ts';
import type { readingPhases } from '../../../shared/contract/readings.ts';
import { bowTitle, markedText } from '../bows/bow-text.ts';

export type ReadingPhase = (typeof readingPhases)[number];

export const phaseLabels: Record<ReadingPhase, string> = {
  arrival: 'Arrival',
  work: 'During the work',
  'after-sanding': 'After sanding',
  final: 'Final',
};

/** One line that tells a bow from the others of its owner. */
export function bowText(bow: Bow): string {
  const serial = bow.serial === '' ? '' : `serial ${bow.serial}`;
  const marked = markedText(bow);
  return [bowTitle(bow), serial, marked === '' ? 'no weight marked' : `marked ${marked}`]
    .filter((part) => part !== '')
    .join(', ');
}
