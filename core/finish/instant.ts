import { refuseField } from '../../shared/errors.ts';

const msPerMinute = 60_000;

/**
 * Milliseconds of an instant, ISO-8601 UTC text as the records keep it.
 * @throws ShopError BAD_INPUT where it is no such text.
 */
export function instantMs(field: string, instant: string): number {
  const ms = instant.endsWith('Z') ? Date.parse(instant) : Number.NaN;
  return Number.isNaN(ms) ? refuseField(field, 'This time cannot be read. Enter it again.') : ms;
}

/** The instant some minutes later, ISO-8601 UTC. @throws ShopError BAD_INPUT as {@link instantMs}. */
export function minutesAfter(field: string, instant: string, minutes: number): string {
  return new Date(Math.round(instantMs(field, instant) + minutes * msPerMinute)).toISOString();
}

/** Minutes from one instant to a later one; below 0 where it is earlier. */
export function minutesBetween(from: string, to: string): number {
  return (instantMs('to', to) - instantMs('from', from)) / msPerMinute;
}

/** `45 min`, `2 h`, `2 h 30 min`, `3 days`: a span as the finish room says it. */
export function spanText(minutes: number): string {
  const whole = Math.round(minutes);
  const days = whole / (24 * 60);
  if (Number.isInteger(days) && days >= 2) return `${days} days`;
  const hours = Math.floor(whole / 60);
  const rest = whole % 60;
  if (hours === 0) return `${rest} min`;
  return rest === 0 ? `${hours} h` : `${hours} h ${rest} min`;
}
