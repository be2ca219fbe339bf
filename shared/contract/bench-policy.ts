import { benchPolicy as policyBody } from '../bench-policy.ts';
import { changed, rowVersion } from '../fields.ts';
import { z } from '../zod.ts';
import { command, commandInput, nothing, ownerOnly, query } from './base.ts';

/** `rowVersion` 0: the shop has kept the usual figures so far. */
const storedPolicy = z.object({ policy: policyBody, rowVersion: z.int().min(0) });

export const benchPolicy = {
  get: query().input(nothing).output(storedPolicy),
  /** Replaces the whole. Plans that were accepted keep the figures they were made with. */
  edit: command(ownerOnly)
    .input(commandInput({ rowVersion: rowVersion.min(0), policy: policyBody }))
    .output(changed),
};
