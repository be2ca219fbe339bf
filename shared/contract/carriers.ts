import { between, changed, day, id, line, rowVersion } from '../fields.ts';
import { carrierProfile } from '../parcel.ts';
import { z } from '../zod.ts';
import { command, commandInput, nothing, ownerOnly, query } from './base.ts';

/** Days after shipping in which damage or loss can be claimed, by the carrier's terms. */
const claimDays = between(1, 730, 'Give between 1 and 730 days.').int('Give whole days.');

export const carrier = z.object({
  id,
  rowVersion,
  name: line(120),
  asOf: day,
  profile: carrierProfile,
  claimDays,
  active: z.boolean(),
});
export type Carrier = z.infer<typeof carrier>;

const carrierFields = { profile: carrierProfile, claimDays };

export const carriers = {
  /** Those in use first, by name. */
  list: query().input(nothing).output(z.array(carrier).max(100)),
  add: command(ownerOnly).input(commandInput(carrierFields)).output(changed),
  edit: command(ownerOnly)
    .input(commandInput({ id, rowVersion, ...carrierFields, active: z.boolean() }))
    .output(changed),
  /** Adds the generic profiles a new shop starts with, where no carrier of that name is kept. */
  addUsual: command(ownerOnly)
    .input(commandInput({}))
    .output(z.object({ added: z.int().min(0) })),
};
