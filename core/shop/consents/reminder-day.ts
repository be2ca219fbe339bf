import { addDays, dayOf } from '../day.ts';

/** Day of the shop's ladder that comes after the last reminder; null once the ladder is done. */
export function nextReminder(
  askedAt: string,
  lastAt: string | null,
  reminderDays: readonly number[],
): string | null {
  const last = lastAt === null ? null : dayOf(lastAt);
  const days = reminderDays.map((step) => addDays(dayOf(askedAt), step));
  return days.find((day) => last === null || day > last) ?? null;
}
