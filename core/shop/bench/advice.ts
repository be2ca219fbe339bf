import type { BenchPolicy } from '../../../shared/bench-policy.ts';
import type { Limb } from '../../../shared/bows.ts';
import type {
  BenchForecast,
  BenchLimbWork,
  BenchStep,
} from '../../../shared/contract/bench-work.ts';
import type { MissingItem } from '../../../shared/gates.ts';
import { decimal } from '../../../shared/measure.ts';
import type { Stage } from '../../../shared/stages.ts';
import { type NextBite, surpriseOf } from '../../limb/index.ts';
import type { OrderRow, RemovalRow } from '../../storage/tables.ts';
import type { PlanFit } from '../plans/fit.ts';
import { recordedAs, type Sandings, sandingsOf } from './bite-method.ts';
import { type Outcome, outcomeOf } from './next-outcome.ts';
import { strokeWords } from './stroke-words.ts';
import type { StrokesSoFar } from './strokes-so-far.ts';
import { widthAfter } from './taken-so-far.ts';
import type { Workdown, WorkdownRows } from './workdown-of.ts';

/** What of an order and its bow decides over the next step, beside the work itself. */
export interface AdviceFacts {
  order: Pick<OrderRow, 'stage' | 'going_home'>;
  /** Strip & sand stands before the weight work on its route. */
  stripsFirst: boolean;
  /** Counted since the plan, or since the bow was last stripped; null where none tell. */
  strokes: StrokesSoFar | null;
  /** Sentences, one for each open stop finding. */
  stops: readonly string[];
  fit: PlanFit | null;
  /** The customer took the bow as it is. */
  undershootAccepted: boolean;
  /** The last weighing after sanding, where no gate takes it for at target, lbf; else null. */
  offTargetLbf: number | null;
  /** Of the last check: seen signs in words where it failed; whether it was after the last removal. */
  glass: { failed: string | null; isCurrent: boolean };
  /** What the gate of a bite still wants. */
  missing: readonly MissingItem[];
}

export interface Advice {
  step: BenchStep;
  /** By the figures alone, whatever must come first; null without a plan. */
  outcome: Outcome | null;
  sandings: Sandings | null;
  /** Spread of one more weighing, lbf. */
  weighingSdLbf: number;
}

const atBench: readonly Stage[] = ['weight-work', 'strip-sand'];

export const forecastOf = ({ forecast }: Pick<NextBite, 'forecast'>): BenchForecast => ({
  weightLbf: forecast.weightLbf,
  sdLbf: forecast.sdLbf,
  bandLbf: [...forecast.bandLbf],
  endLbf: forecast.endLbf,
  tillerIn: forecast.tillerIn,
});

export function workOfNext(
  work: Workdown,
  next: Extract<NextBite, { stop: null }>,
  limb: Limb,
): BenchLimbWork {
  const { cuts, bellyThou, backThou } = next.removal[limb];
  return {
    limb,
    cuts: work.response[limb].stations.map(({ fromFadeIn, widthIn }) => {
      const cut = cuts.find((one) => one.fromFadeIn === fromFadeIn);
      const [offLeftIn, offRightIn] = [cut?.leftIn ?? 0, cut?.rightIn ?? 0];
      return { fromFadeIn, widthNowIn: widthIn, offLeftIn, offRightIn };
    }),
    bellyThou,
    backThou,
  };
}

const stepOfMethod = ({ method }: Outcome, { smallestSteps }: BenchPolicy): number => {
  if (method.kind === 'narrow') return smallestSteps.sideIn;
  return method.kind === 'sanding strokes' ? smallestSteps.strokeThou : smallestSteps.faceThou;
};

/** Places and faces of a removal, to be measured again. */
export function remeasureStep(removal: RemovalRow, rows: WorkdownRows): BenchStep {
  const cuts = rows.cuts.filter((cut) => cut.removal_id === removal.id);
  return {
    kind: 'remeasure',
    removalId: removal.id,
    rowVersion: removal.row_version,
    method: removal.method,
    places: cuts
      .filter(({ done_left_in, done_right_in }) => (done_left_in ?? 0) + (done_right_in ?? 0) > 0)
      .sort((a, b) =>
        a.limb === b.limb ? a.from_fade_in - b.from_fade_in : a.limb === 'upper' ? -1 : 1,
      )
      .map((cut) => ({
        limb: cut.limb,
        fromFadeIn: cut.from_fade_in,
        beforeIn: cut.width_before_in ?? 0,
        expectedIn: widthAfter({ ...cut, width_after_in: null }, 0),
      })),
    faces: rows.faces
      .filter((face) => face.removal_id === removal.id)
      .map(({ limb, face, planned_thou }) => ({ limb, face, plannedThou: planned_thou })),
  };
}

function questionsStep({ openSurprise }: Workdown): BenchStep | null {
  if (openSurprise === null) return null;
  const { readingId, rowVersion, readLbf, expectedLbf, innovationSe } = openSurprise;
  const questions = [...(surpriseOf(innovationSe) ?? [])];
  return { kind: 'questions', readingId, rowVersion, readLbf, expectedLbf, questions };
}

/** What must be done or looked at before anything more is reckoned; null where nothing. */
function firstOf(work: Workdown, rows: WorkdownRows, facts: AdviceFacts): BenchStep | null {
  if (work.openRemoval !== null) return remeasureStep(work.openRemoval, rows);
  const { failed, isCurrent } = facts.glass;
  if (failed !== null) {
    return {
      kind: 'limit',
      why: [`The last glass check failed (${failed}): take nothing more off.`],
    };
  }
  if (work.lastRemovalAt !== null && !isCurrent) return { kind: 'glass-check' };
  if (!work.tiller.isCurrent) return { kind: 'read-tiller' };
  if (!work.replay.weighedSinceRemoval || !work.replay.known) return { kind: 'weigh' };
  return questionsStep(work);
}

function undershotStep(
  next: Extract<NextBite, { stop: 'undershot' }>,
  facts: AdviceFacts,
  { toCome }: Sandings,
): BenchStep {
  if (facts.undershootAccepted) return { kind: 'at-target', forecast: forecastOf(next) };
  const byText = `${decimal(next.byLbf)} lb under the target`;
  const why =
    toCome === null
      ? [`It stands ${byText}.`, 'Nothing more comes off. The office makes an offer and asks.']
      : [
          `With the sanding that is still to come it ends ${byText}.`,
          'Nothing more comes off. Plan a lighter sanding at the desk, or agree another target with the customer first.',
        ];
  return { kind: 'undershot', byLbf: next.byLbf, why };
}

/** The rule that leaves out the smallest bite, in words; what is left is then taken by light passes. */
function whySandOnly(next: NextBite, targetLbf: number): string[] {
  if (next.stop !== 'sand only' || next.because === null) return [];
  const { of, dropLbf, forecast } = next.because;
  const bite = `The smallest bite (about ${decimal(dropLbf)} lb)`;
  const passes = 'Light passes take what sanding leaves.';
  switch (of) {
    case 'chance': {
      const inHundred = Math.max(1, Math.round(forecast.chanceUnder * 100));
      return [
        `${bite} would leave ${inHundred} chances in 100 of ending under ${decimal(targetLbf)} lb after sanding.`,
        passes,
      ];
    }
    case 'tiller':
      return [`${bite} would take the tiller out of its tolerance.`, passes];
    case 'size':
      return [`${bite} takes more than is left before sanding.`, passes];
  }
}

/** Nothing more comes off; the gate goes by the last weighing, which must not say otherwise. */
function doneStep(forecast: BenchForecast, facts: AdviceFacts): BenchStep {
  const { offTargetLbf, undershootAccepted } = facts;
  if (offTargetLbf === null || undershootAccepted) return { kind: 'at-target', forecast };
  const differs = { lastLbf: offTargetLbf, allLbf: forecast.weightLbf };
  return { kind: 'weigh-again', differs };
}

/** The stop before or after sanding. */
function sandingStep(
  next: NextBite,
  facts: AdviceFacts,
  { sandings, targetLbf }: { sandings: Sandings; targetLbf: number },
): BenchStep {
  const forecast = forecastOf(next);
  if (sandings.toCome === null) return doneStep(forecast, facts);
  const { stage } = facts.order;
  const lastHere = stage === 'weight-work' && facts.stripsFirst;
  const why = [...whySandOnly(next, targetLbf), ...strokeWords(sandings)];
  return { kind: 'sand-only', here: stage === 'strip-sand' || lastHere, forecast, why };
}

function biteStep(
  work: Workdown,
  facts: AdviceFacts,
  policy: BenchPolicy,
  { outcome, sandings }: { outcome: Outcome; sandings: Sandings },
): BenchStep {
  const { next } = outcome;
  const isDueHere = facts.order.stage === 'strip-sand' && sandings.toCome !== null;
  // Strokes that are done cannot be planned lighter: they are recorded, and the bow is weighed.
  const isUnderWay = isDueHere && sandings.strokes !== null;
  if (next.stop === 'undershot' && !isUnderWay) return undershotStep(next, facts, sandings);
  // What strip & sand is for comes before any light pass, and no bite is taken in between.
  if (isDueHere) {
    if (sandings.betweenSandings) return { kind: 'not-at-bench' };
    const why = strokeWords(sandings);
    return { kind: 'sand-only', here: true, forecast: forecastOf(next), why };
  }
  if (next.stop === 'limit') return { kind: 'limit', why: [next.why] };
  if (next.stop === 'weigh again') return { kind: 'weigh-again', differs: null };
  const barred = facts.missing.some(({ item }) => item === 'above-target');
  if (next.stop !== null || barred) {
    return sandingStep(next, facts, { sandings, targetLbf: work.plan.target_lbf });
  }
  return {
    kind: 'bite',
    method: recordedAs[outcome.method.kind],
    face: work.response.face,
    upper: workOfNext(work, next, 'upper'),
    lower: workOfNext(work, next, 'lower'),
    step: stepOfMethod(outcome, policy),
    isLightPass: outcome.method.kind === 'sanding strokes',
    forecast: forecastOf(next),
  };
}

/** What the hands do next on an order, and what it rests on. Pure. */
export function adviceOf(
  work: Workdown | null,
  rows: WorkdownRows,
  facts: AdviceFacts,
  policy: BenchPolicy,
): Advice {
  const none = { outcome: null, sandings: null, weighingSdLbf: 0 };
  const { stage, going_home: goingHome } = facts.order;
  if (facts.stops.length > 0)
    return { ...none, step: { kind: 'stop-finding', why: [...facts.stops] } };
  if (!atBench.includes(stage) || goingHome !== null)
    return { ...none, step: { kind: 'not-at-bench' } };
  if (work === null) return { ...none, step: { kind: 'no-plan' } };
  if (facts.fit?.ok === false)
    return { ...none, step: { kind: 'plan-does-not-fit', why: facts.fit.why } };
  const sandings = sandingsOf(work, facts, policy);
  const weighingSdLbf = work.replay.readings.at(-1)?.sessionSdLbf ?? work.plan.weight_sd_lbf;
  const outcome = outcomeOf(work, policy, sandings, weighingSdLbf);
  const step = firstOf(work, rows, facts) ?? biteStep(work, facts, policy, { outcome, sandings });
  return { step, outcome, sandings, weighingSdLbf };
}
