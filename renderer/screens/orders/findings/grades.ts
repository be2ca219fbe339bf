import type { Finding } from '../../../../shared/contract/findings.ts';

export type Grade = Finding['grade'];

/** Worst first. */
export const gradeOrder: readonly Grade[] = ['stop', 'watch', 'cosmetic'];

export const gradeLabels: Record<Grade, string> = {
  stop: 'Stop',
  watch: 'Watch',
  cosmetic: 'Cosmetic',
};

export const gradeMeanings: Record<Grade, string> = {
  stop: 'Do not string or draw. No work goes on until it is repaired and looked at again.',
  watch: 'May get worse. The customer accepts it in writing before the work goes on.',
  cosmetic: 'Looks only. Written down, nothing waits for it.',
};

/** Open ones first, the worst on top, then the newest. */
export function sortedFindings(findings: readonly Finding[]): Finding[] {
  return findings.toSorted(
    (a, b) =>
      Number(a.resolvedAt !== null) - Number(b.resolvedAt !== null) ||
      gradeOrder.indexOf(a.grade) - gradeOrder.indexOf(b.grade) ||
      b.foundAt.localeCompare(a.foundAt),
  );
}
