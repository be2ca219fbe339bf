import type { ReadingRow } from '../../storage/tables.ts';

/** When in a job a bow was weighed, as papers and lists say it. */
export const phaseWords: Record<ReadingRow['phase'], string> = {
  arrival: 'arrival',
  work: 'work',
  'after-sanding': 'after sanding',
  final: 'final',
};
