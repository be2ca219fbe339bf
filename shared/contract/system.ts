import { eventIterator } from '@orpc/contract';
import { id, instant, line } from '../fields.ts';
import { startUpChoice, startUpState } from '../start-up.ts';
import { z } from '../zod.ts';
import { keep, nothing, officeRoles, query } from './base.ts';

export const systemStatus = z.object({
  version: line(40),
  startUp: startUpState,
  dataFolder: line(1000),
  /** True while the shop has no people yet. */
  isNew: z.boolean(),
  /** Why the demo shop could not be opened when it was last asked for, or null. */
  demoTrouble: line(1000).nullable(),
});
export type SystemStatus = z.infer<typeof systemStatus>;

/** One committed command, so that every open screen can read again what it shows. */
export const change = z.object({
  commandId: id,
  name: line(80),
  orderId: id.nullable(),
  tables: z.array(line(60)).max(40),
});
export type Change = z.infer<typeof change>;

export const backupFile = z.object({
  name: line(200),
  madeAt: instant,
  schemaVersion: z.int().min(0).max(100_000),
  bytes: z.number().min(0),
});

export const system = {
  status: query('anyone').input(nothing).output(systemStatus),
  /** Answers the question that a start-up screen asks. */
  resolve: keep('anyone')
    .input(z.strictObject({ choice: startUpChoice, argument: line(1000).optional() }))
    .output(systemStatus),
  /**
   * Closes a shop that has nobody in it yet, or that cannot be opened, and opens the demo shop in
   * a folder of its own. Answers at once; the status tells how its filling gets on.
   */
  openDemo: keep('anyone').input(nothing).output(systemStatus),
  /** Back to the shop's own folder; gives up a filling that is under way. */
  leaveDemo: keep('anyone').input(nothing).output(systemStatus),
  changes: query('anyone').input(nothing).output(eventIterator(change)),
  backups: query(officeRoles).input(nothing).output(z.array(backupFile).max(1000)),
  backUpNow: keep(officeRoles).input(nothing).output(backupFile),
  /** Open to anyone: it matters most when nobody can sign on, and it names nobody. */
  problemReport: keep('anyone').input(nothing).output(z.file()),
};
