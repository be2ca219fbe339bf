import { z } from './zod.ts';

const printable = /^[^\p{Cc}]*$/u;
const printableLines = /^[^\p{Cc}]*(?:[\n\t][^\p{Cc}]*)*$/u;
const oneLine = 'Use one line of plain text, without control characters.';

/** One line of text as a person types it; trimmed, no control characters. */
export const line = (max = 200) => z.string().max(max).trim().regex(printable, oneLine);

/** One line that may not be empty. */
export const requiredLine = (max = 200) => line(max).min(1, 'This may not be empty.');

/** Why something is done, in a few words. */
export const reason = line(400).min(3, 'Give the reason in a few words.');

/** Several lines of text; line ends and tabs allowed, no other control characters. */
export const text = (max = 4000) =>
  z.string().max(max).regex(printableLines, 'Use plain text, without control characters.');

export const id = z
  .string()
  .min(1)
  .max(64)
  .regex(/^[0-9A-Za-z-]+$/, 'This is not an id.');
export const rowVersion = z.int().min(1).max(2_000_000_000);

/** Calendar day `YYYY-MM-DD`, checked to exist. */
export const day = z.iso.date().max(10);
/** Instant, ISO-8601 in UTC. */
export const instant = z.iso.datetime().max(40);

/** Money in integer cents. */
export const cents = z.int().min(0).max(100_000_000);
/** Draw force of a hand-drawn bow, pound-force. */
export const forceLbf = z.number().min(1).max(250);
/** Draw length, inches from the stated reference. */
export const drawIn = z.number().min(5).max(40);
/** A measured number with the one sentence that says what it may be. */
export const between = (min: number, max: number, sentence: string) =>
  z.number().min(min, sentence).max(max, sentence);
/** Any other length on a bow, inches. */
export const lengthIn = z.number().min(0).max(120);

/** Every write names itself: a repeat of the same id returns the stored result. */
export const commandId = id;

/** What most commands answer: the record they made or changed. */
export const changed = z.object({ id, rowVersion });
export type Changed = z.infer<typeof changed>;
