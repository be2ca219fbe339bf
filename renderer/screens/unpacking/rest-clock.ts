import { restedFrom } from '../../../shared/arrival.ts';

export interface Rest {
  /** Out of the box for so many whole minutes. */
  minutes: number;
  /** Whole minutes still to go; 0 once it has rested. */
  minutesLeft: number;
  isRested: boolean;
  /** Instant from which it has rested. */
  until: string;
}

const minuteMs = 60_000;

/** How long the bow has been out of its box, as the clock on the table shows it. */
export function restAt(restingSince: string, now: number): Rest {
  const until = restedFrom(restingSince);
  const left = Math.max(0, Date.parse(until) - now);
  return {
    minutes: Math.max(0, Math.floor((now - Date.parse(restingSince)) / minuteMs)),
    minutesLeft: Math.ceil(left / minuteMs),
    isRested: left === 0,
    until,
  };
}

/** `1 h 05 min`, `40 min`. */
export function minutesText(minutes: number): string {
  const hours = Math.floor(minutes / 60);
  const rest = minutes % 60;
  return hours === 0 ? `${rest} min` : `${hours} h ${String(rest).padStart(2, '0')} min`;
}
