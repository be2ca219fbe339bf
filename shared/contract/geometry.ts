import { limb, stationSurface } from '../bows.ts';
import { between, changed, id, instant, line, reason, rowVersion, text } from '../fields.ts';
import { z } from '../zod.ts';
import { command, commandInput, query } from './base.ts';

/** One place along a limb. All inches; the distance runs along the limb from its fade line. */
export const station = z.strictObject({
  limb,
  fromFadeIn: between(0, 50, 'A station is between 0 and 50 inches from the fade.'),
  widthIn: between(0.1, 4, 'A limb is between 1/10 and 4 inches wide.'),
  thicknessIn: between(0.05, 2, 'A limb is between 1/20 and 2 inches thick.').nullable(),
  /** Thickness over old finish counts the finish in. */
  surface: stationSurface,
});
export type Station = z.infer<typeof station>;

/** A station as measured, and what changed there since the version before. */
export const comparedStation = z.object({
  ...station.shape,
  /** New minus old, inches; none where the version before has no such station or thickness. */
  widthChangeIn: z.number().nullable(),
  thicknessChangeIn: z.number().nullable(),
  /** `3/64" narrower, 12 thou thinner`, `as before`, or empty where nothing can be compared. */
  changeText: line(120),
});

export const geometryVersion = z.object({
  id,
  rowVersion,
  bowId: id,
  limbSetId: id.nullable(),
  limbSetName: line(80).nullable(),
  orderId: id.nullable(),
  orderNumber: line(20).nullable(),
  version: z.int().min(1),
  measuredAt: instant,
  personName: line(120),
  note: text(1000),
  struckReason: line(400).nullable(),
  /** The version it is compared with: the last one before it of the same limbs that stands. */
  comparedWith: z.int().min(1).nullable(),
  stations: z.array(comparedStation).max(80),
});
export type GeometryVersion = z.infer<typeof geometryVersion>;

export const geometry = {
  /** Newest first. */
  list: query()
    .input(z.strictObject({ bowId: id }))
    .output(z.array(geometryVersion).max(500)),
  /** Always a new version; what was measured once is never changed. */
  record: command()
    .input(
      commandInput({
        bowId: id,
        limbSetId: id.nullable(),
        orderId: id.nullable(),
        note: text(1000),
        /** From fade to tip, at least three of each limb that was measured. */
        stations: z.array(station).max(80, 'At most 80 stations.'),
      }),
    )
    .output(z.object({ ...changed.shape, version: z.int() })),
  strikeOut: command().input(commandInput({ id, rowVersion, reason })).output(changed),
};
