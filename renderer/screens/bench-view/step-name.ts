import type { Seen } from './seen.ts';

/**
 * What an entry belongs to: widths to their cut, answers to their reading, the rest to the very
 * advice it follows. What others write meanwhile loses no width that was already measured, and no
 * sign that was looked for is taken for the next look.
 */
export function stepName({ orderId, advice, step }: Seen): string {
  const start = `${orderId}-${step.kind}`;
  switch (step.kind) {
    case 'remeasure':
      return `${start}-${step.removalId}`;
    case 'questions':
      return `${start}-${step.readingId}`;
    default:
      return `${start}-${advice}`;
  }
}
