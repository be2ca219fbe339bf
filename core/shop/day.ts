const two = (part: number) => String(part).padStart(2, '0');

/**
 * Calendar day `YYYY-MM-DD` of an instant where the program runs, which is where the shop is.
 * The UTC day would already be tomorrow in the evening of an American shop.
 */
export function dayOf(instant: string): string {
  const at = new Date(instant);
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
}

/** `2026-03-02 14:05` of an instant on the wall clock of the shop, which is where the program runs. */
export function wallTimeOf(instant: string): string {
  const at = new Date(instant);
  return `${dayOf(instant)} ${two(at.getHours())}:${two(at.getMinutes())}`;
}

/**
 * The first day on which an instant lies behind from morning to night: what a paper without hours
 * may promise.
 */
export function firstWholeDayFrom(instant: string): string {
  const day = dayOf(instant);
  const [year = 0, month = 1, date = 1] = day.split('-').map(Number);
  const begins = new Date(year, month - 1, date).getTime();
  return Date.parse(instant) === begins ? day : addDays(day, 1);
}

/** The day so many days later; calendar days, so that no change of the clocks gets in the way. */
export function addDays(day: string, days: number): string {
  const at = new Date(`${day}T00:00:00Z`);
  at.setUTCDate(at.getUTCDate() + days);
  return at.toISOString().slice(0, 10);
}
