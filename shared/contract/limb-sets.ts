import { between, changed, id, instant, line, requiredLine, rowVersion, text } from '../fields.ts';
import { z } from '../zod.ts';
import { command, commandInput } from './base.ts';
import { marking } from './marking.ts';

/** One pair of limbs of a take-down bow, with the riser its marking belongs to. */
export const limbSetFields = z.strictObject({
  name: requiredLine(80),
  upperSerial: line(80),
  lowerSerial: line(80),
  /** Of the bow these limbs make with that riser. */
  amoLengthIn: between(36, 84, 'An AMO length is between 36 and 84 inches.').nullable(),
  ...marking,
  /** The riser the limbs were marked on: the same limbs weigh differently on another. */
  riserName: line(120),
  riserLengthIn: between(6, 36, 'A riser is between 6 and 36 inches long.').nullable(),
  riserPadDeg: between(-10, 30, 'A pad angle is between -10 and 30 degrees.').nullable(),
  notes: text(4000),
});
export type LimbSetFields = z.infer<typeof limbSetFields>;

export const limbSet = z.object({
  id,
  rowVersion,
  bowId: id,
  createdAt: instant,
  ...limbSetFields.shape,
});
export type LimbSet = z.infer<typeof limbSet>;

/** Limb sets are listed with their bow. */
export const limbSets = {
  /** Only for a take-down bow. */
  add: command()
    .input(commandInput({ bowId: id, ...limbSetFields.shape }))
    .output(changed),
  edit: command()
    .input(commandInput({ id, rowVersion, ...limbSetFields.shape }))
    .output(changed),
};
