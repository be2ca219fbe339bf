import type { Customer } from '../../../../shared/contract/customers.ts';

/** Tiller targets offered for how the archer holds the string; common practice, not a standard. */
export function tillerAdvice(style: Customer['shootingStyle']): string[] {
  const split = 'upper +1/8" to +1/4"';
  const threeUnder = 'upper 0 to +1/8"';
  if (style === 'split') return [split];
  if (style === 'three-under') return [threeUnder];
  return [`${split} (split finger)`, `${threeUnder} (three under)`];
}
