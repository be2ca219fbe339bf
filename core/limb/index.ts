/**
 * Limb mechanics: how much to take off, how sure, and when to stop. Pure functions; inch,
 * pound-force and radian unless a name says otherwise. Solvers answer a status, never a silent
 * best guess; bad input is a ShopError with one sentence.
 */
export type { WholeBow } from './bow.ts';
export { type BraceTiller, braceTiller, type StringDistance } from './brace-tiller.ts';
export type { HalfBow, LimbCurve } from './curve.ts';
export { amoAtNock, nockAtAmo } from './draw-length.ts';
export { filmAddsPercent, filmGpa } from './film-stiffness.ts';
export {
  type ForceDraw,
  type ForceDrawOptions,
  fitForceDraw,
  ftLbfFromInLbf,
  weightsBeside28,
} from './force-draw.ts';
export type { ForceReading } from './force-readings.ts';
export {
  type Layup,
  type LimbProfile,
  type LimbStation,
  limbCurve,
  sizesOf,
} from './limb-profile.ts';
export {
  amoLengthFromMasterString,
  amoLengthText,
  markingText,
  markingTextAt28,
  masterStringFor,
} from './marking-text.ts';
export { type MeasuredBow, type MeasuredLimb, modelledWeight, wholeBowOf } from './modelled-bow.ts';
export { type MonotoneCubic, monotoneCubic } from './monotone-cubic.ts';
export type { PlanBow, PlanWish } from './plan/bow.ts';
export { defaultLimits, type PlanLimits } from './plan/limits.ts';
export { planReduction, planWithoutHinge } from './plan/plan.ts';
export type { MethodPlan, PlanOptions, ReductionPlan } from './plan/types.ts';
export { evenCut, withSandingOf } from './plan/work.ts';
export {
  type BowRemoval,
  bowAfter,
  type Prediction,
  type PredictionOptions,
  predictRemoval,
} from './predict-removal.ts';
export { applyRemoval, type LimbRemoval, nothingTaken } from './removal.ts';
export { type Section, type SectionStiffness, sectionStiffness } from './section.ts';
export type { SideCut } from './side-cut.ts';
export type { Solved } from './solved.ts';
export { type StaticBow, type StaticBowOptions, solveStaticBow } from './static-bow.ts';
export { type Template, type TemplateLimb, templateOffsets } from './template.ts';
export { psiFromGpa } from './units.ts';
export { type NextBite, nextBite } from './workdown/next-bite.ts';
export { type BiteMethod, executionSd, type Tracking } from './workdown/next-bite-candidate.ts';
export type { Forecast } from './workdown/next-bite-forecast.ts';
export type { BowResponse } from './workdown/next-bite-response.ts';
export { bowResponse, withWidths } from './workdown/next-bite-response.ts';
export { sandingThatFits } from './workdown/next-bite-sanding.ts';
export { calliperSdIn, remeasured } from './workdown/remeasured.ts';
export { removalSdLbf, type WeighingSpread, weighingSd } from './workdown/spread.ts';
export { type SurpriseQuestion, surpriseFromSe, surpriseOf } from './workdown/surprise.ts';
export {
  measuredBareEffectiveness,
  recordRemoval,
  recordWeighing,
  startWorkdown,
  unknownEffectiveness,
  type WorkdownState,
  weightSdLbf,
} from './workdown/workdown.ts';
