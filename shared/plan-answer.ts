import { limb } from './bows.ts';
import { line } from './fields.ts';
import { cutShape, planInput } from './plan-input.ts';
import { cutFace, planMethod, planMethods, sanding } from './weight-plan.ts';
import { z } from './zod.ts';

const number = z.number();
const sentences = z.array(line(500)).max(60);
const perFace = z.object({ belly: number, back: number });
const band = z.tuple([number, number]);

/** What comes off a limb, as the model takes it. Cuts per side, inches; faces in thousandths. */
const limbRemoval = z.object({
  cuts: z.array(z.object({ fromFadeIn: number, leftIn: number, rightIn: number })).max(80),
  face: cutFace,
  bellyThou: number,
  backThou: number,
  edgeRadiusIn: number.nullable(),
});

/** Widths at one station, inches. What is off is off the work alone. */
const stationFigures = z.object({
  fromFadeIn: number,
  presentWidthIn: perFace,
  newWidthIn: perFace,
  offPerSideIn: number,
  offTotalIn: number,
  presentThicknessIn: number,
  /** After the work, before sanding. */
  newThicknessIn: number,
});

/** A point of the limb's outline, every half inch and at every station; after the work. */
const outlinePoint = z.object({
  fromFadeIn: number,
  presentWidthIn: perFace,
  newWidthIn: perFace,
  presentThicknessIn: number,
  newThicknessIn: number,
});
export type OutlinePoint = z.infer<typeof outlinePoint>;

const limbAnswer = z.object({
  removal: limbRemoval,
  /** The full cut, off each side and off both, inches. */
  offPerSideIn: number,
  offTotalIn: number,
  offThou: perFace,
  /** Part of the whole work that this limb gets. */
  sharePart: number,
  /** After sanding, inches; null on a face without glass. */
  glassLeftIn: z.object({ belly: number.nullable(), back: number.nullable() }),
  stations: z.array(stationFigures).max(80),
  /** Empty while sliding. */
  outline: z.array(outlinePoint).max(200),
});
export type LimbAnswer = z.infer<typeof limbAnswer>;

const forecast = z.object({ weightLbf: number, bandLbf: band, sdLbf: number });
const cutStation = z.object({
  limb,
  fromFadeIn: number,
  oldWidthIn: number,
  widthIn: number,
  thicknessIn: number,
  sideStiffness: number,
});

const strain = z.object({
  peakBefore: number,
  peakAfter: number,
  hinges: z.array(z.object({ limb, fromFadeIn: number, risePart: number })).max(200),
  /** Surface strain at full draw, before and after everything; no unit. */
  along: z.array(z.object({ limb, fromFadeIn: number, before: number, after: number })).max(200),
});

/** One way to the target with all that speaks for and against it. */
export const methodAnswer = z.object({
  method: planMethod,
  upper: limbAnswer,
  lower: limbAnswer,
  afterWork: forecast,
  /** After sanding. */
  afterFinishing: forecast,
  finishingTakesLbf: number,
  /** Where the work stops: target, reserve and what sanding still takes, lbf. */
  stopAtLbf: number,
  tiller: z.object({
    nowIn: number,
    targetIn: number,
    afterWorkIn: number,
    afterIn: number,
    reached: z.boolean(),
  }),
  narrowest: cutStation.nullable(),
  weakestSide: cutStation.nullable(),
  strain,
  tipMass: z.object({ beforeLb: number, afterLb: number, changePart: number }),
  reachesTarget: z.boolean(),
  /** Each names its limit and its figure. One is enough to forbid the method. */
  refusals: z.array(z.object({ limit: line(40), sentence: line(500) })).max(20),
  notes: sentences,
});
export type MethodAnswer = z.infer<typeof methodAnswer>;

const methodOutcome = z.discriminatedUnion('outcome', [
  z.object({ outcome: z.literal('planned'), method: planMethod, plan: methodAnswer }),
  z.object({ outcome: z.literal('no-answer'), method: planMethod, sentence: line(500) }),
]);
export type MethodOutcomeAnswer = z.infer<typeof methodOutcome>;

/** The force-draw curve of the bow as it is, AMO. */
const forceDraw = z.object({
  basis: z.enum(['monotone cubic', 'straight line', 'model', 'one reading']),
  /** Weights that were measured. */
  measured: z.array(z.object({ drawIn: number, forceLbf: number })).max(40),
  /** Fitted, every half inch from brace or the first reading. */
  curve: z.array(z.object({ drawIn: number, forceLbf: number })).max(120),
  /** The model, raised or lowered to meet the present weight; brace to draw. */
  modelled: z.array(z.object({ drawIn: number, forceLbf: number })).max(120),
  /** The recommended way after everything, on the same scale. Empty where there is none. */
  after: z.array(z.object({ drawIn: number, forceLbf: number })).max(120),
  /** lb per inch at the draw, and whether it is measured or modelled. */
  slopeLbfPerIn: number,
  slopeFrom: z.enum(['readings', 'model']),
  /** Brace to the draw, ft lbf; null where the readings do not tell. */
  storedFtLbf: number.nullable(),
  modelledStoredFtLbf: number,
  /** At 28 in and at the customer's own draw; `why` where no weight is told. */
  at28: z.object({ drawIn: number, forceLbf: number.nullable(), note: line(300) }),
  own: z.object({ drawIn: number, forceLbf: number.nullable(), note: line(300) }).nullable(),
  warnings: sentences,
});
export type ForceDrawAnswer = z.infer<typeof forceDraw>;

export const reckonInput = z.strictObject({
  input: planInput,
  /** `sliding`: the methods alone, without outlines, curves, sanding and search: fast. */
  detail: z.enum(['full', 'sliding']),
});
export type ReckonInput = z.infer<typeof reckonInput>;

const reckoned = z.object({
  outcome: z.literal('reckoned'),
  drop: z.object({
    lbf: number,
    part: number,
    level: z.enum(['small', 'note', 'confirm', 'refused']),
    sentence: line(500).nullable(),
  }),
  /** Sanding first, then in the order they are tried. */
  methods: z.array(methodOutcome).max(planMethods.length),
  recommended: planMethod.nullable(),
  /** Only where nothing is recommended. */
  lowest: z.object({ weightLbf: number, method: planMethod.nullable(), why: sentences }).nullable(),
  /**
   * Where narrowing is recommended but makes a hinge: the same with the full cut ending elsewhere,
   * that makes none. Put its shape into the input to take it.
   */
  withoutHinge: z.object({ cutShape, sentence: line(500), plan: methodAnswer }).nullable(),
  /** Whether the reduction leaves room for a full strip. Null while sliding. */
  sanding: z
    .object({ fits: sanding, leftLbf: number, tillerLbf: number, sentence: line(500) })
    .nullable(),
  /** Part of the weight that a thousandth off both faces of both limbs takes. Null while sliding. */
  dropPerThou: number.nullable(),
  forceDraw: forceDraw.nullable(),
  warnings: sentences,
});

export const reckoning = z.discriminatedUnion('outcome', [
  reckoned,
  /** The bow itself has no modelled state; the sentence says why. */
  z.object({ outcome: z.literal('no-answer'), sentence: line(500) }),
]);
export type Reckoning = z.infer<typeof reckoning>;
export type Reckoned = z.infer<typeof reckoned>;
