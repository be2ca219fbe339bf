const second = 1000;
const minute = 60 * second;
const hour = 60 * minute;
const day = 24 * hour;

const two = (part: number) => String(part).padStart(2, '0');

/**
 * A span as a running clock shows it: `3 d 4 h`, `2 h 05 min`, `42 min 10 s`, `9 s`. Seconds only
 * under an hour, where somebody waits for them; never below nothing.
 * @param ms milliseconds.
 */
export function runningText(ms: number): string {
  const left = Math.max(0, ms);
  const days = Math.floor(left / day);
  const hours = Math.floor((left % day) / hour);
  const minutes = Math.floor((left % hour) / minute);
  const seconds = Math.floor((left % minute) / second);
  if (days >= 2) return `${days} d ${hours} h`;
  const allHours = Math.floor(left / hour);
  if (allHours > 0) return `${allHours} h ${two(minutes)} min`;
  return minutes > 0 ? `${minutes} min ${two(seconds)} s` : `${seconds} s`;
}
