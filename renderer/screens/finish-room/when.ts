import dayjs from 'dayjs';

/** Instant of a local time as a date and time field writes it; null where there is none. */
export function instantFrom(local: string): string | null {
  if (local === '') return null;
  const at = dayjs(local);
  return at.isValid() ? at.toISOString() : null;
}
