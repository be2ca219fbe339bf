import { closedStages, type Service, type Stage, stages } from '../../../shared/stages.ts';

const always: readonly Stage[] = [
  'requested',
  'in-mail',
  'arrived',
  'agreed',
  'final-check',
  'packed',
];

const workStages: Record<Service, readonly Stage[]> = {
  'reduce-weight': ['weight-work', 'strip-sand', 'finish', 'cure'],
  'scuff-recoat': ['finish', 'cure'],
  'strip-refinish': ['strip-sand', 'finish', 'cure'],
  're-mark': ['finish', 'cure'],
  'overlay-nock': ['strip-sand', 'finish', 'cure'],
  'grip-rest': [],
  'new-string': [],
};

export type Handover = 'shipped' | 'collected';

export interface RouteOptions {
  /** Strip & sand before the weight work: thinning needs bare glass. */
  stripFirst: boolean;
  handover: Handover;
}

/** The stages an order goes through for its services, in order. */
export function routeFor(services: readonly Service[], options: RouteOptions): Stage[] {
  const needed = new Set<Stage>([...always, options.handover]);
  for (const service of services) for (const stage of workStages[service]) needed.add(stage);
  const route = stages.filter((stage) => needed.has(stage));
  if (!options.stripFirst || !needed.has('weight-work')) return route;
  return route.flatMap((stage): Stage[] => {
    if (stage === 'weight-work') return ['strip-sand', 'weight-work'];
    return stage === 'strip-sand' ? [] : [stage];
  });
}

export function handoverOf(route: readonly Stage[]): Handover {
  return route.includes('collected') ? 'collected' : 'shipped';
}

/**
 * The choices that a route of work was made with. A route home has forgotten them: ask the one
 * that it replaced.
 */
export function optionsOf(route: readonly Stage[]): RouteOptions {
  const strip = route.indexOf('strip-sand');
  return {
    stripFirst: strip !== -1 && strip < route.indexOf('weight-work'),
    handover: handoverOf(route),
  };
}

/** The same way, with the bow leaving by the other door. */
export function withHandover(route: readonly Stage[], handover: Handover): Stage[] {
  return route.map((stage) => (stage === 'shipped' || stage === 'collected' ? handover : stage));
}

/**
 * The way home from a stage: what was passed so far, then packing and the handover. Stages that a
 * step back leaves ahead again are left out, so that no gate of the work stands before the parcel.
 */
export function routeHome(route: readonly Stage[], from: Stage): Stage[] {
  const last = Math.max(route.indexOf(from), route.indexOf('arrived'));
  const passed = route
    .slice(0, last + 1)
    .filter((stage) => stage !== 'packed' && !closedStages.includes(stage));
  return [...passed, 'packed', handoverOf(route)];
}

/** The stage after this one on the route, or null once the bow has left. */
export function nextStage(route: readonly Stage[], stage: Stage): Stage | null {
  if (closedStages.includes(stage)) return null;
  return route[route.indexOf(stage) + 1] ?? null;
}

/** Stages entered when going forward from one to another, the target included. */
export function stagesBetween(route: readonly Stage[], from: Stage, to: Stage): Stage[] {
  return route.slice(route.indexOf(from) + 1, route.indexOf(to) + 1);
}
