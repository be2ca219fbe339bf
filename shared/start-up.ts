import { line } from './fields.ts';
import { z } from './zod.ts';

/** What can keep a shop from opening until a person decides. */
export const startUpReasons = [
  'wrong-folder',
  'not-our-file',
  'not-writable',
  'locked',
  'newer-file',
  'corrupt',
  'failed-migration',
  'disk-full',
] as const;
export const startUpReason = z.enum(startUpReasons);
export type StartUpReason = z.infer<typeof startUpReason>;

export const startUpChoice = z.enum(['try-again', 'choose-folder', 'restore-backup']);
export type StartUpChoice = z.infer<typeof startUpChoice>;

const busyPhases = [
  'locating',
  'locking',
  'opening',
  'checking',
  'backing-up',
  'migrating',
] as const;
export type BusyPhase = (typeof busyPhases)[number];

/** Where start-up stands. Only "needs-you" waits for a person. */
export const startUpState = z.discriminatedUnion('phase', [
  z.object({ phase: z.enum(busyPhases) }),
  /** The demo shop is being made up; `done` is the share, 0 to 1. */
  z.object({ phase: z.literal('filling-demo'), done: z.number().min(0).max(1), words: line(200) }),
  z.object({ phase: z.literal('ready'), schemaVersion: z.int() }),
  z.object({
    phase: z.literal('needs-you'),
    reason: startUpReason,
    sentence: line(1000),
    choices: z.array(startUpChoice).max(10),
    /** Backups that can be restored, newest first, by file name. */
    backups: z.array(line(200)).max(1000),
  }),
]);
export type StartUpState = z.infer<typeof startUpState>;
export type NeedsYou = Extract<StartUpState, { phase: 'needs-you' }>;
