import { decimal } from '../../../shared/measure.ts';
import type { MethodAnswer } from '../../../shared/plan-answer.ts';
import type { PlanInput } from '../../../shared/plan-input.ts';

/** One weighing at the draw that the plan is about, lbf. */
export interface StoryWeighing {
  name: string;
  lbf: number;
}

export interface StoryFacts {
  weighings: StoryWeighing[];
  wish: PlanInput['wish'];
  plan: MethodAnswer | null;
}

export interface WeightStory {
  points: { place: number; name: string; lbf: number; kind: 'weighed' | 'forecast' }[];
  /** Forecast with its 80 % band. */
  forecast: { place: number; lbf: number; bandLbf: readonly [number, number] } | null;
  targetLbf: number;
  /** Weights between which the work stops: what sanding takes over the target, with and without the reserve. */
  stopBandLbf: readonly [number, number] | null;
  rangeLbf: readonly [number, number];
  /** The story in one sentence. */
  caption: string;
}

const text = (lbf: number) => lbf.toFixed(1);

function rangeOf(values: readonly number[]): readonly [number, number] {
  return [Math.floor(Math.min(...values) - 1), Math.ceil(Math.max(...values) + 1)];
}

function captionOf({ weighings, wish, plan }: StoryFacts): string {
  const last = weighings.at(-1);
  const draw = Number.isFinite(wish.drawIn) ? ` @ ${decimal(wish.drawIn, 4)}"` : '';
  const now = last === undefined ? '' : `Weighs ${text(last.lbf)} lb${draw} now. `;
  const target = `The target is ${text(wish.targetLbf)} lb${draw}.`;
  if (plan === null) return `${now}${target}`;
  const [low, high] = plan.afterFinishing.bandLbf;
  return `${now}Work stops at ${text(plan.stopAtLbf)} lb; sanding then takes about ${text(plan.finishingTakesLbf)} lb, to ${text(plan.afterFinishing.weightLbf)} lb (80 % between ${text(low)} and ${text(high)}). ${target}`;
}

/** Weighings in the order they were made, then the forecast, against target and stop band. */
export function weightStoryOf(facts: StoryFacts): WeightStory {
  const { wish, plan } = facts;
  const weighings =
    facts.weighings.length > 0 ? facts.weighings : [{ name: 'Now', lbf: wish.weightLbf }];
  const points: WeightStory['points'] = weighings.map(({ name, lbf }, i) => ({
    place: i + 1,
    name,
    lbf,
    kind: 'weighed',
  }));
  const place = points.length + 1;
  const forecast =
    plan === null
      ? null
      : { place, lbf: plan.afterFinishing.weightLbf, bandLbf: plan.afterFinishing.bandLbf };
  if (forecast !== null) {
    points.push({ place, name: 'Forecast', lbf: forecast.lbf, kind: 'forecast' });
  }
  const stopBandLbf =
    plan === null ? null : ([plan.stopAtLbf - wish.reserveLbf, plan.stopAtLbf] as const);
  const values = [
    ...points.map(({ lbf }) => lbf),
    wish.targetLbf,
    ...(forecast?.bandLbf ?? []),
    ...(stopBandLbf ?? []),
  ].filter(Number.isFinite);
  return {
    points,
    forecast,
    targetLbf: wish.targetLbf,
    stopBandLbf,
    rangeLbf: values.length === 0 ? [40, 50] : rangeOf(values),
    caption: captionOf({ ...facts, weighings }),
  };
}
