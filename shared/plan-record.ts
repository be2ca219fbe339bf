import { drawIn, id, instant, line, rowVersion } from './fields.ts';
import { methodAnswer } from './plan-answer.ts';
import { planInput } from './plan-input.ts';
import { cutFace, learnedFigure, planFix, planMethod, sanding } from './weight-plan.ts';
import { z } from './zod.ts';

const number = z.number();

/** A fact the records do not hold: what was taken instead, and where it is put right. */
export const planGap = z.object({
  /** Path in the input: `bow.edgeRadiusIn`, `wish.tillerIn`, `bow.upper.stations`. */
  field: line(80),
  sentence: line(300),
  fix: planFix,
});
export type PlanGap = z.infer<typeof planGap>;

/** An editable input, what it was made from, and what is missing. */
export const planStart = z.object({
  input: planInput,
  about: z.object({
    orderId: id.nullable(),
    orderNumber: line(20).nullable(),
    /** Of the order; `accept` wants it back. */
    rowVersion: rowVersion.nullable(),
    bowId: id.nullable(),
    bowName: line(300),
    limbSetId: id.nullable(),
    limbSetName: line(80).nullable(),
  }),
  geometry: z.object({ id, version: z.int(), measuredAt: instant }).nullable(),
  reading: z.object({ id, phase: line(40), weighedAt: instant, text: line(60) }).nullable(),
  /** A station at which it says `over-finish` counts the film in; no thinning until bare. */
  gaps: z.array(planGap).max(60),
  /** What allowance and effectiveness rest on; by the kind of sanding where it is changed. */
  allowances: z.object({ 'full strip': learnedFigure, 'final sanding only': learnedFigure }),
  effectiveness: learnedFigure,
  /** Why no plan can be accepted for this order as it stands; null where one can. */
  notNow: line(300).nullable(),
});
export type PlanStart = z.infer<typeof planStart>;

/** An accepted plan, and whether it still fits the records. */
export const planSummary = z.object({
  id,
  rowVersion,
  version: z.int().min(1),
  method: planMethod,
  acceptedAt: instant,
  personName: line(120),
  confirmedBecause: line(400),
  struckReason: line(400).nullable(),
  drawIn,
  weightLbf: number,
  weightSdLbf: number,
  targetLbf: number,
  reserveLbf: number,
  stopAtLbf: number,
  forecastLbf: number,
  bandLbf: z.tuple([number, number]),
  tillerTargetIn: number,
  sanding,
  allowance: z.object({ meanThou: number, sdThou: number, jobs: z.int() }),
  effectiveness: z.object({ mean: number, sd: number, jobs: z.int() }),
  dropPerThou: number,
  slopeLbfPerIn: number,
  braceLbfPerIn: number,
  /** What has changed since, one sentence each, from what to what. */
  fits: z.object({ ok: z.boolean(), why: z.array(line(400)).max(60) }),
});
export type PlanSummary = z.infer<typeof planSummary>;

const effect = z.object({ drop: number, tillerIn: number });
const limbResponse = z.object({
  stations: z.array(z.object({ fromFadeIn: number, widthIn: number, perIn: effect })).max(80),
  perThouBothFaces: effect,
  perThouBelly: effect,
});

/** How the bow answers to small removals, as it was when the plan was accepted. */
export const planResponse = z.object({
  face: cutFace,
  upper: limbResponse,
  lower: limbResponse,
  modelledLbf: number,
  modelledTillerIn: number,
});
export type PlanResponse = z.infer<typeof planResponse>;

export const planFrozen = z.object({
  ...planSummary.shape,
  orderId: id,
  bowId: id,
  limbSetId: id.nullable(),
  geometryId: id.nullable(),
  readingId: id.nullable(),
  input: planInput,
  plan: methodAnswer,
  response: planResponse,
});
export type PlanFrozen = z.infer<typeof planFrozen>;
