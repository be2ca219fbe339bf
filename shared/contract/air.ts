import { id, instant, line, rowVersion, text } from '../fields.ts';
import { z } from '../zod.ts';
import { number, sentences } from './finish-fields.ts';

export const airReading = z.object({
  id,
  rowVersion,
  at: instant,
  airF: number,
  humidityPercent: number,
  surfaceF: number.nullable(),
  dewPointF: number,
  note: text(1000),
  personName: line(120),
  struckReason: line(400).nullable(),
});
export type AirReading = z.infer<typeof airReading>;

export const airLook = z.object({
  dewPointF: number,
  /** Surface above dew point, Fahrenheit degrees as a difference; without one that of the air. */
  marginF: number.nullable(),
  leastMarginF: number,
  /** Limits of the sheet; null where no system is chosen. */
  limits: z
    .object({
      airF: z.object({ from: number, to: number }),
      humidityPercent: z.object({ from: number, to: number }),
    })
    .nullable(),
  /** What is wrong for a coat, one sentence each; empty where a coat may go on. */
  troubles: sentences,
});
export type AirLook = z.infer<typeof airLook>;
