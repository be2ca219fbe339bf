import { onTestFinished } from 'vitest';

/** Runs the rest of the test where the shop stands in another time zone. */
export function inZone(zone: string): void {
  const before = process.env.TZ;
  process.env.TZ = zone;
  onTestFinished(() => {
    if (before === undefined) delete process.env.TZ;
    else process.env.TZ = before;
  });
}
