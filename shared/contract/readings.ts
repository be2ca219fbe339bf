import { drawReference } from '../bows.ts';
import {
  between,
  changed,
  drawIn,
  forceLbf,
  id,
  instant,
  line,
  reason,
  requiredLine,
  rowVersion,
  text,
} from '../fields.ts';
import { z } from '../zod.ts';
import { command, commandInput } from './base.ts';

export const readingPhases = ['arrival', 'work', 'after-sanding', 'final'] as const;
export const pull = z.strictObject({ drawIn, forceLbf });

const readingFields = {
  phase: z.enum(readingPhases),
  /** What every draw length of the session was measured to. */
  drawReference,
  /** Limbs of a take-down that were weighed; none for the bow's own. */
  limbSetId: id.nullable(),
  /** Which riser they were on, where it is not the bow's own: needed when only limbs came. */
  riserNote: line(200),
  scaleId: id,
  /** Rig reading with nothing pulled, taken off every pull. */
  rigZeroLbf: z.number().min(-10).max(10),
  braceIn: z.number().min(3).max(12),
  stringNote: requiredLine(200),
  /** Where the string runs over the limbs, seen from the belly. */
  stringTrack: line(200),
  supportPoint: line(200),
  pullPoint: line(200),
  /** Upper minus lower string-to-limb distance at the fades, inches. */
  tillerIn: z.number().min(-2).max(2).nullable(),
  temperatureF: z.number().min(-20).max(130).nullable(),
  /** Only where wood or bamboo lies bare. */
  moisturePct: between(2, 30, 'Moisture is between 2 and 30 percent.').nullable(),
  /** How long it had been strung when it was weighed: a bow sinks a little on the string. */
  strungMinutes: between(0, 10_080, 'Strung for between 0 minutes and a week.').nullable(),
  flexedFirst: z.boolean(),
  note: text(1000),
};

export const reading = z.object({
  id,
  rowVersion,
  ...readingFields,
  scaleName: line(120),
  limbSetName: line(80).nullable(),
  scaleErrorLbf: z.number().nullable(),
  weighedAt: instant,
  personName: line(120),
  struckReason: line(400).nullable(),
  pulls: z.array(z.object({ ...pull.shape, dropped: z.boolean() })).max(40),
  /** One weight a draw length: mean of the pulls there, without the first pull of the session. */
  weights: z
    .array(z.object({ drawIn, forceLbf: z.number(), pulls: z.int(), text: line(60) }))
    .max(40),
});
export type Reading = z.infer<typeof reading>;

export const readings = {
  add: command()
    .input(
      commandInput({
        orderId: id,
        ...readingFields,
        pulls: z.array(pull).min(2, 'Give at least two pulls: the first one is dropped.').max(40),
      }),
    )
    .output(changed),
  strikeOut: command().input(commandInput({ id, rowVersion, reason })).output(changed),
};
