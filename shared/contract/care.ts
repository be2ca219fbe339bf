import { between, changed, rowVersion, text } from '../fields.ts';
import { z } from '../zod.ts';
import { command, commandInput, nothing, ownerOnly, query } from './base.ts';

export const carePolicyFields = z.strictObject({
  /** Least weight of an arrow, grains for each pound of draw weight. */
  arrowGrainsPerLb: between(5, 20, 'Arrows weigh between 5 and 20 grains a pound.'),
  /** The shop's own terms, printed on the care card as they stand. */
  careTerms: text(2000),
});
export const carePolicy = z.object({ rowVersion, ...carePolicyFields.shape });
export type CarePolicy = z.infer<typeof carePolicy>;

export const care = {
  policy: query().input(nothing).output(carePolicy),
  editPolicy: command(ownerOnly)
    .input(commandInput({ rowVersion, ...carePolicyFields.shape }))
    .output(changed),
};
