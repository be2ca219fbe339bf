import dayjs from 'dayjs';

/** Days, instants and money as the screens write them, in the local time of this computer. */

export function today(): string {
  return dayjs().format('YYYY-MM-DD');
}

/** Whole days from today to the day; negative when it has passed. */
export function daysUntil(day: string): number {
  return dayjs(day).diff(dayjs(today()), 'day');
}

/** Near days by name, others as `12 Dec`, with the year when it is not this one. */
export function dayText(day: string): string {
  const away = daysUntil(day);
  if (away === 0) return 'today';
  if (away === 1) return 'tomorrow';
  if (away === -1) return 'yesterday';
  if (away > 1 && away < 7) return dayjs(day).format('ddd');
  return fullDay(day);
}

/** `12 Dec`, or `12 Dec 2027` in another year. */
export function fullDay(day: string): string {
  return dayjs(day).format(dayjs(day).isSame(dayjs(), 'year') ? 'D MMM' : 'D MMM YYYY');
}

/** `Wednesday, 25 November`. */
export function longDay(day: string): string {
  return dayjs(day).format('dddd, D MMMM');
}

/** `due Fri`, `due 12 Dec`, `3 days late`. */
export function dueText(day: string): string {
  const late = -daysUntil(day);
  if (late > 0) return late === 1 ? '1 day late' : `${late} days late`;
  return `due ${dayText(day)}`;
}

/** An instant as `12 Dec, 14:05`. */
export function momentText(instant: string): string {
  const at = dayjs(instant);
  return at.format(at.isSame(dayjs(), 'year') ? 'D MMM, HH:mm' : 'D MMM YYYY, HH:mm');
}

/** Local calendar day of an instant, `YYYY-MM-DD`. */
export function dayOf(instant: string): string {
  return dayjs(instant).format('YYYY-MM-DD');
}

/** How long ago in whole days: `today`, `1 d`, `12 d`. */
export function sinceText(instant: string): string {
  const days = -daysUntil(dayOf(instant));
  return days <= 0 ? 'today' : `${days} d`;
}

/** Money as `$1,250` or `$1,250.50`. */
export function moneyText(cents: number): string {
  const whole = cents % 100 === 0;
  return new Intl.NumberFormat('en-US', {
    style: 'currency',
    currency: 'USD',
    minimumFractionDigits: whole ? 0 : 2,
  }).format(cents / 100);
}

/** Cents typed as `1,250.50` or `$1250`; null when it is not an amount. */
export function centsFrom(typed: string): number | null {
  const plain = typed.replace(/[$,\s]/g, '');
  if (!/^\d{1,7}(\.\d{0,2})?$/.test(plain)) return null;
  return Math.round(Number(plain) * 100);
}
