import { difference } from '../../../shared/measure.ts';
import type { Service } from '../../../shared/stages.ts';
import type { GateFacts } from './gate-facts.ts';

/** Ends this close to the target, pounds; shop policy. Under by more needs the customer's decision. */
export const tolerance = { overLbf: 1, underLbf: 0.5 };

export type Condition = (facts: GateFacts) => boolean;

export const has =
  (service: Service): Condition =>
  (facts) =>
    facts.services.includes(service);

/** Services that change the bow its maker made. */
const altering: readonly Service[] = ['reduce-weight', 'strip-refinish', 're-mark', 'overlay-nock'];

export const altersBow: Condition = (facts) =>
  altering.some((service) => facts.services.includes(service));

export const losesWeight: Condition = (facts) =>
  has('reduce-weight')(facts) || has('strip-refinish')(facts);

export const onRoute =
  (stage: 'weight-work' | 'strip-sand' | 'finish'): Condition =>
  (facts) =>
    facts.route.includes(stage);

export const hasTarget: Condition = (facts) =>
  facts.targetLbf !== null && facts.targetDrawIn !== null;

/** On the route of work, as against on its way home with the work not done. */
export const atWork: Condition = (facts) => facts.goingHome === null;
export const goesHome: Condition = (facts) => facts.goingHome !== null;

export const both =
  (...conditions: readonly Condition[]): Condition =>
  (facts) =>
    conditions.every((condition) => condition(facts));

/** Weighed after sanding, and still more above its target than it may end. */
export const isOvershot: Condition = (facts) =>
  facts.targetLbf !== null &&
  facts.afterSandingLbf !== null &&
  difference(facts.afterSandingLbf, facts.targetLbf) > tolerance.overLbf;

export const isUndershot: Condition = (facts) =>
  facts.targetLbf !== null &&
  facts.afterSandingLbf !== null &&
  difference(facts.targetLbf, facts.afterSandingLbf) > tolerance.underLbf;
