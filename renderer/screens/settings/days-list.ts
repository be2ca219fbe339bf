/** Reads `3, 10, 21`; a part that is no whole number becomes NaN, which the contract refuses. */
export function daysFrom(typed: string): number[] {
  return typed
    .split(/[,;\s]+/)
    .filter((part) => part !== '')
    .map((part) => (/^\d+$/.test(part) ? Number(part) : Number.NaN));
}

export function daysList(days: readonly number[]): string {
  return days.filter((day) => !Number.isNaN(day)).join(', ');
}
