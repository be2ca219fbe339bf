import { decimal } from './measure.ts';
import { z } from './zod.ts';

/**
 * P: the European scale (FEPA 43, ISO 6344). CAMI: the American one (ANSI B74.18). The same number
 * means another size on each from 240 up.
 */
export const gritScales = ['P', 'CAMI'] as const;
export const gritScale = z.enum(gritScales);
export type GritScale = (typeof gritScales)[number];

/** A grit as it is printed on the back of the sheet. The number alone says nothing. */
export const grit = z.strictObject({
  grit: z.int('Give the number on the back of the sheet.').min(12).max(2500),
  scale: gritScale,
});
export type Grit = z.infer<typeof grit>;

/** With its average grain size, and the print that size was read from. */
export const sizedGrit = z.object({
  ...grit.shape,
  micrometres: z.number().min(1).max(5000),
  source: z.string().max(200),
});
export type SizedGrit = z.infer<typeof sizedGrit>;

/** `P320` or `CAMI 320`. */
export function gritText({ grit: number, scale }: Grit): string {
  return scale === 'P' ? `P${number}` : `CAMI ${number}`;
}

/** `P320 (46.2 µm)`. */
export function gritWithSize(sized: Grit & { micrometres: number }): string {
  return `${gritText(sized)} (${decimal(sized.micrometres)} µm)`;
}
