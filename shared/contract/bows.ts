import {
  bowKind,
  bowProfile,
  construction,
  facing,
  glassHow,
  hand,
  listedSpecies,
  lowStretchTips,
  takeDown,
} from '../bows.ts';
import { between, changed, id, instant, line, rowVersion, text } from '../fields.ts';
import { z } from '../zod.ts';
import { command, commandInput, query } from './base.ts';
import { bowLife } from './bow-life.ts';
import { limbSet } from './limb-sets.ts';
import { marking } from './marking.ts';
import { orderCard } from './order-card.ts';

const braceIn = between(3, 15, 'A brace height is between 3 and 15 inches.').nullable();
const glassIn = between(
  0.005,
  0.12,
  'Glass is between 5 and 120 thousandths of an inch thick.',
).nullable();

/** One face of the limbs. Thicknesses in inches: the sheet as it was bought, and what is left of it. */
export const face = z.strictObject({
  facing,
  glassMadeIn: glassIn,
  glassNowIn: glassIn,
  glassHow,
});
export type Face = z.infer<typeof face>;

export const limbLengths = z.strictObject({
  /** Along the riser from the throat to the fade line, where the limb begins to bend. */
  fadeIn: between(0, 20, 'A fade is between 0 and 20 inches from the throat.').nullable(),
  /** Along the limb from the fade line to the string nock. */
  limbIn: between(5, 50, 'A limb is between 5 and 50 inches long.').nullable(),
});
export type LimbLengths = z.infer<typeof limbLengths>;

export const bowFields = z.strictObject({
  kind: bowKind,
  construction,
  takeDown,
  hand,
  maker: line(120),
  model: line(120),
  serial: line(80),
  /** As marked on the bow; never worked out from a string somebody sent. */
  amoLengthIn: between(36, 84, 'An AMO length is between 36 and 84 inches.').nullable(),
  /** Straight from nock to nock, unstrung. */
  tipToTipIn: between(30, 90, 'Tip to tip is between 30 and 90 inches.').nullable(),
  ...marking,
  maxSafeDrawIn: between(5, 40, 'A safe draw is between 5 and 40 inches.').nullable(),
  profile: bowProfile,
  /** How far the tip stands off the line of the straight limb, towards the back, unstrung. */
  recurveDepthIn: between(0, 12, 'A recurve is between 0 and 12 inches deep.').nullable(),
  /** From the throat to the fade line, square to the bow; positive where the fades lie towards the archer. */
  throatToFadeIn: between(-4, 4, 'This offset is between -4 and 4 inches.').nullable(),
  /** Of the limb at its pad or fade to the line of the bow; positive leans towards the archer. */
  limbPadDeg: between(-10, 30, 'A pad angle is between -10 and 30 degrees.').nullable(),
  limbs: z.strictObject({ upper: limbLengths, lower: limbLengths }),
  faces: z.strictObject({ back: face, belly: face }),
  coreWood: line(120),
  moisturePct: between(2, 30, 'Moisture is between 2 and 30 percent.').nullable(),
  edgeRadiusIn: between(0, 0.25, 'An edge radius is between 0 and 1/4 inch.').nullable(),
  lowStretchTips,
  /** Brace heights the bow is made for, throat of the grip to the string. */
  braceLowIn: braceIn,
  braceHighIn: braceIn,
  listedSpecies,
  notes: text(4000),
});
export type BowFields = z.infer<typeof bowFields>;

export const bow = z.object({
  id,
  rowVersion,
  createdAt: instant,
  /** Owner; none means the shop itself. */
  customerId: id.nullable(),
  ...bowFields.shape,
});
export type Bow = z.infer<typeof bow>;

export const bows = {
  search: query()
    .input(z.strictObject({ text: line(200) }))
    .output(z.array(bow.extend({ ownerName: line(120) })).max(50)),
  get: query()
    .input(z.strictObject({ id }))
    .output(
      z.object({
        bow,
        ownerName: line(120),
        limbSets: z.array(limbSet).max(100),
        orders: z.array(orderCard).max(500),
      }),
    ),
  /** Everything that ever happened to one bow here, across all its orders. */
  life: query()
    .input(z.strictObject({ id }))
    .output(
      z.object({
        bow,
        ownerName: line(120),
        limbSets: z.array(limbSet).max(100),
        orders: z.array(orderCard).max(500),
        ...bowLife,
      }),
    ),
  add: command()
    .input(commandInput({ customerId: id.nullable(), ...bowFields.shape }))
    .output(changed),
  edit: command()
    .input(commandInput({ id, rowVersion, ...bowFields.shape }))
    .output(changed),
};
