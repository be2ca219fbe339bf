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

/** `45 min`, `2 h`, `2 h 30 min`, `3 days`, `3 days 4 h`: a span as the finish room says it. */
export function spanText(minutes: number): string {
  const whole = Math.round(minutes);
  // Up to two days people count hours, as sheets do.
  const days = whole < 48 * 60 ? 0 : Math.floor(whole / (24 * 60));
  const hours = Math.floor(whole / 60) - days * 24;
  const rest = whole % 60;
  const parts = [
    days > 0 ? `${days} days` : '',
    hours > 0 ? `${hours} h` : '',
    rest > 0 ? `${rest} min` : '',
  ].filter((part) => part !== '');
  return parts.length === 0 ? '0 min' : parts.join(' ');
}
