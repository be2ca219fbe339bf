import { id, instant, line, text } from '../fields.ts';
import { subjectMax, wordingMax, wordingUse } from '../wordings.ts';
import { z } from '../zod.ts';
import { command, commandInput, nothing, ownerOnly, query } from './base.ts';

const parts = { subject: line(subjectMax), body: text(wordingMax) };

export const wording = z.object({
  use: wordingUse,
  /** 0 is the built-in text. */
  version: z.int().min(0),
  ...parts,
  writtenAt: instant.nullable(),
  writtenBy: line(120),
});
export type Wording = z.infer<typeof wording>;

const version = z.int().min(0).max(1_000_000);

export const wordings = {
  /** The text each use has now. */
  list: query().input(nothing).output(z.array(wording).max(100)),
  /** All versions of one use, newest first, down to the built-in one. */
  history: query()
    .input(z.strictObject({ use: wordingUse }))
    .output(z.array(wording).max(2000)),
  /** The text as a customer of an example order would read it, and what keeps it from being saved. */
  preview: query()
    .input(z.strictObject({ use: wordingUse, ...parts }))
    .output(
      z.object({
        subject: line(2000),
        body: text(60_000),
        troubles: z.record(z.string().max(40), z.string().max(1000)),
      }),
    ),
  /** Writes a new version; `version` is the one that was read. Older ones stay. */
  save: command(ownerOnly)
    .input(commandInput({ use: wordingUse, version, ...parts }))
    .output(z.object({ id, version })),
  /** The built-in text as a new version. */
  backToBuiltIn: command(ownerOnly)
    .input(commandInput({ use: wordingUse, version }))
    .output(z.object({ id, version })),
};
