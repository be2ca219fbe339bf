import { bowKind, construction, facing, stationSurface } from './bows.ts';
import { between, drawIn, forceLbf } from './fields.ts';
import { cutFace, planMethod, planMethods, sanding } from './weight-plan.ts';
import { z } from './zod.ts';

/** A place on a limb, inches; its width on either face, its thickness over everything. */
export const planStation = z.strictObject({
  fromFadeIn: between(0, 50, 'A station is between 0 and 50 inches from the fade.'),
  bellyWidthIn: between(0.1, 4, 'A limb is between 1/10 and 4 inches wide.'),
  backWidthIn: between(0.1, 4, 'A limb is between 1/10 and 4 inches wide.'),
  thicknessIn: between(0.05, 2, 'A limb is between 1/20 and 2 inches thick.'),
});
export type PlanStationInput = z.infer<typeof planStation>;

/** One limb on its half of the riser. */
export const planLimb = z.strictObject({
  /** Throat to fade line along the bow, inches. */
  fadeIn: between(0, 20, 'A fade is between 0 and 20 inches from the throat.'),
  /** Throat to fade line square to the bow, inches; positive towards the archer. */
  fadeOffsetIn: between(-4, 4, 'This offset is between -4 and 4 inches.'),
  /** Limb at its pad or fade to the line of the bow, degrees; positive towards the archer. */
  padDeg: between(-10, 30, 'A pad angle is between -10 and 30 degrees.'),
  /** Fade line to string nock along the limb, inches. */
  lengthIn: between(8, 50, 'A limb is between 8 and 50 inches long.'),
  /** From fade to tip. */
  stations: z.array(planStation).min(3, 'Give three stations of a limb at least.').max(40),
});
export type PlanLimbInput = z.infer<typeof planLimb>;

const glassIn = between(0, 0.12, 'Glass is at most 120 thousandths of an inch thick.');

/** One face of the limbs. Glass 0: none. */
export const planFace = z.strictObject({
  facing,
  glassNowIn: glassIn,
  /** As bought; null where nobody knows, and what is on it now counts. */
  glassMadeIn: glassIn.nullable(),
});

/** Everything a plan needs to know of a bow. */
export const planBow = z.strictObject({
  kind: bowKind,
  construction,
  back: planFace,
  belly: planFace,
  upper: planLimb,
  lower: planLimb,
  /** Tip off the line of the straight limb, away from the archer, by an even curve, inches. */
  reflexIn: between(-12, 12, 'A reflex is between -12 and 12 inches.'),
  /** Further away by a hook over the outer part, inches; 0 for no recurve. */
  recurveIn: between(0, 12, 'A recurve is between 0 and 12 inches deep.'),
  /** Where the hook begins, part of the limb's length from the fade. */
  recurveFromPart: between(0.2, 0.95, 'A hook begins between 0.2 and 0.95 of the limb.'),
  /** Throat to string, inches. */
  braceIn: between(3, 15, 'A brace height is between 3 and 15 inches.'),
  edgeRadiusIn: between(0, 0.25, 'An edge radius is between 0 and 1/4 inch.'),
  /** AMO, inches; null where nobody knows. */
  maxSafeDrawIn: between(5, 40, 'A safe draw is between 5 and 40 inches.').nullable(),
  /** Modulus of the core along the grain, and of the glass, GPa. Guesses, which largely cancel. */
  coreGpa: between(2, 40, 'A core modulus is between 2 and 40 GPa.'),
  glassGpa: between(20, 60, 'A glass modulus is between 20 and 60 GPa.'),
  /** `unknown`: guessed in part, and the forecast has the wider band. */
  section: z.enum(['measured', 'unknown']),
  /** Thickness over finish counts the film in: nothing is thinned until the limbs are measured bare. */
  surface: stationSurface,
});
export type PlanFaceInput = z.infer<typeof planFace>;
export type PlanBowInput = z.infer<typeof planBow>;

const tiller = between(-2, 2, 'A tiller is between -2 and 2 inches.');

export const planWish = z.strictObject({
  /** Present weight at the draw, with one standard deviation, lbf. */
  weightLbf: forceLbf,
  weightSdLbf: between(0, 10, 'The spread of a weighing is between 0 and 10 lb.'),
  /** AMO, inches. */
  drawIn,
  targetLbf: forceLbf,
  /** Upper minus lower string distance at the fades, inches. Positive: the upper limb is weaker. */
  tillerIn: tiller,
  tillerTargetIn: tiller,
  /** What follows the weight work. */
  sanding,
  /** What it takes off each face, thousandths, with one standard deviation. */
  allowanceMeanThou: between(0, 20, 'An allowance is between 0 and 20 thousandths a face.'),
  allowanceSdThou: between(0, 10, 'Its spread is between 0 and 10 thousandths.'),
  /** Kept above the target after sanding, lbf. */
  reserveLbf: between(0, 10, 'A reserve is between 0 and 10 lb.'),
  /** Real over modelled drop of removals on this bow, with one standard deviation. */
  effectivenessMean: between(0.3, 3, 'An effectiveness is between 0.3 and 3.'),
  effectivenessSd: between(0, 1, 'Its spread is between 0 and 1.'),
});
export type PlanWishInput = z.infer<typeof planWish>;

/** Where a side cut runs along the limb. */
export const cutShape = z.strictObject({
  /** Nothing comes off nearer the fade, inches from it. */
  fromIn: between(0, 20, 'The cut begins between 0 and 20 inches from the fade.'),
  /** The full cut begins here, inches from the fade. */
  fullFromIn: between(0, 25, 'The full cut begins between 0 and 25 inches from the fade.'),
  /** The full cut ends here, part of the limb's length. */
  carriedPart: between(0, 0.95, 'The full cut ends between 0 and 0.95 of the limb.'),
  /** It has tapered out to nothing this far short of the nock, inches. */
  endsShortIn: between(0, 20, 'The cut ends between 0 and 20 inches short of the nock.'),
});
export type CutShapeInput = z.infer<typeof cutShape>;

export const planChoices = z.strictObject({
  cutShape,
  /** The face that side cuts narrow. */
  face: cutFace,
  /** Null: all that suit the bow. */
  methods: z
    .array(planMethod)
    .min(1, 'Choose a way to take weight off.')
    .max(planMethods.length)
    .nullable(),
});

/** A measured weight, AMO draw. */
export const planReading = z.strictObject({ drawIn, forceLbf });

/** Everything a plan needs, by itself: a what-if needs no order. */
export const planInput = z.strictObject({
  bow: planBow,
  wish: planWish,
  choices: planChoices,
  /** Weights of one session for the force-draw curve; the present weight alone where it is empty. */
  readings: z.array(planReading).max(40),
  /** The customer's own draw, AMO inches; null where nobody knows. */
  ownDrawIn: drawIn.nullable(),
});
export type PlanInput = z.infer<typeof planInput>;
