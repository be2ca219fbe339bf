import { glassSign, removalMethod, stringTrack } from '../bench.ts';
import { between, changed, id, instant, line, reason, rowVersion, text } from '../fields.ts';
import { override, refused } from '../gates.ts';
import { z } from '../zod.ts';
import { command, commandInput } from './base.ts';

const recorded = {
  id,
  rowVersion,
  /** What it says, in words. */
  words: line(600),
  note: text(1000),
  at: instant,
  personName: line(120),
  struckReason: line(400).nullable(),
};

export const removalRecord = z.object({
  ...recorded,
  method: removalMethod,
  remeasuredAt: instant.nullable(),
});
export type RemovalRecord = z.infer<typeof removalRecord>;

export const glassCheck = z.object({
  ...recorded,
  outcome: z.enum(['ok', 'not-ok']),
  signs: z.array(glassSign).max(4),
});
export type GlassCheck = z.infer<typeof glassCheck>;

export const tillerReading = z.object({
  ...recorded,
  /** Upper minus lower string-to-limb distance at the fades, inches. */
  tillerIn: z.number(),
  upperTrack: stringTrack,
  lowerTrack: stringTrack,
});
export type TillerReading = z.infer<typeof tillerReading>;

/** Newest first, the struck-out ones too. */
export const benchLog = z.object({
  removals: z.array(removalRecord).max(500),
  glassChecks: z.array(glassCheck).max(500),
  tillerReadings: z.array(tillerReading).max(500),
});
export type BenchLog = z.infer<typeof benchLog>;

const struck = () => command().input(commandInput({ id, rowVersion, reason })).output(changed);

/** What is written down at the bench whether there is a plan or not. */
export const benchRecords = {
  /** A bite in words only, where nobody planned the weight work in numbers. Passes the bite's gate. */
  noteRemoval: command()
    .input(
      commandInput({
        orderId: id,
        note: text(1000).min(3, 'Say what came off: limb, side, stations, per side and in total.'),
        override: override.optional(),
      }),
    )
    .output(
      z.discriminatedUnion('outcome', [
        z.object({ outcome: z.literal('recorded'), ...changed.shape }),
        refused,
      ]),
    ),
  /** The four signs looked for after every removal; any of them stops the next bite. */
  checkGlass: command()
    .input(
      commandInput({
        orderId: id,
        showThrough: z.boolean(),
        strands: z.boolean(),
        runOut: z.boolean(),
        exposedCore: z.boolean(),
        note: text(1000),
      }),
    )
    .output(changed),
  readTiller: command()
    .input(
      commandInput({
        orderId: id,
        /** Upper minus lower string-to-limb distance at the fades, inches. */
        tillerIn: between(-2, 2, 'Tiller is between -2 and 2 inches.'),
        upperTrack: stringTrack,
        lowerTrack: stringTrack,
        braceIn: between(3, 12, 'A brace height is between 3 and 12 inches.').nullable(),
        note: text(1000),
      }),
    )
    .output(changed),
  strikeOutRemoval: struck(),
  strikeOutGlassCheck: struck(),
  strikeOutTiller: struck(),
};
