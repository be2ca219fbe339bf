import { changed, id, line, reason, rowVersion } from '../fields.ts';
import { reckonInput, reckoning } from '../plan-answer.ts';
import { planInput } from '../plan-input.ts';
import { planFrozen, planStart } from '../plan-record.ts';
import { planMethod } from '../weight-plan.ts';
import { z } from '../zod.ts';
import { command, commandInput, everyone, nothing, query } from './base.ts';

export const plans = {
  /** An editable input from the records of an order, with what is missing in them. */
  start: query()
    .input(z.strictObject({ orderId: id }))
    .output(planStart),
  /** A what-if on a bow that no order is about; its last AMO weighing counts as the present weight. */
  startFromBow: query()
    .input(z.strictObject({ bowId: id, limbSetId: id.nullable() }))
    .output(planStart),
  /** A what-if without records: a bow of typical sizes. */
  startBlank: query().input(nothing).output(planStart),
  /**
   * All ways to the target side by side. Reads the shop's limits, no other record. A call that
   * was given up before it began is dropped.
   */
  reckon: query().input(reckonInput).output(reckoning),
  /**
   * Reckons again with the shop's limits and freezes input, method and the response of the bow.
   * Refused: a method with a refusal, a big drop without a reason, another target than the
   * order's, an open stop finding, an order that goes home or stands where no plan is made.
   */
  accept: command(everyone)
    .input(
      commandInput({
        orderId: id,
        /** Of the order, as the screen read it. */
        rowVersion,
        input: planInput,
        method: planMethod,
        /** The measurement and the weighing that the input was made from, as `start` gave them. */
        geometryId: id.nullable(),
        readingId: id.nullable(),
        /** Needed where the drop is one to confirm; empty otherwise. */
        confirmedBecause: line(400),
      }),
    )
    .output(z.object({ ...changed.shape, version: z.int().min(1) })),
  strikeOut: command().input(commandInput({ id, rowVersion, reason })).output(changed),
  /** One accepted plan with everything that was frozen. */
  get: query().input(z.strictObject({ id })).output(planFrozen),
};
