import { addDays } from '../day.ts';

const dayMs = 24 * 60 * 60 * 1000;

/** Midnight in UTC, where every day has 24 hours: clock changes of the shop's zone play no part. */
const atMidnight = (day: string) => Date.parse(`${day}T00:00:00.000Z`);

/** Whole calendar days from one day to another; negative when the second comes first. */
export function daysBetween(from: string, to: string): number {
  return Math.round((atMidnight(to) - atMidnight(from)) / dayMs);
}

/** `1 day`, `12 days`. */
export function daysText(days: number): string {
  return days === 1 ? '1 day' : `${days} days`;
}

/** Where something dated stands on this day, or null while it is more than a week ahead. */
export function dueGroup(dueOn: string, day: string): 'late' | 'today' | 'soon' | null {
  if (dueOn < day) return 'late';
  if (dueOn === day) return 'today';
  return dueOn <= addDays(day, 7) ? 'soon' : null;
}

/** The same for what is done once its day has come and not talked about before. */
export function onceDue(dueOn: string, day: string): 'late' | 'today' | null {
  if (dueOn > day) return null;
  return dueOn < day ? 'late' : 'today';
}
