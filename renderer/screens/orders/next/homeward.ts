import type { OrderCard } from '../../../../shared/contract/order-card.ts';
import {
  closedStages,
  type GoingHome,
  type Stage,
  stageLabels,
} from '../../../../shared/stages.ts';

/** Ways off the route, which are rarely taken. */
export type SideStep = 'send-home' | 'cancel' | 'take-up';

const notHereYet: readonly Stage[] = ['requested', 'in-mail'];

/** The ways off the route that are open to this person as the order stands. */
export function sideStepsOf(
  { stage, goingHome }: Pick<OrderCard, 'stage' | 'goingHome'>,
  isOffice: boolean,
): SideStep[] {
  const isClosed = closedStages.includes(stage);
  const steps: SideStep[] = [];
  if (isOffice && (stage === 'cancelled' || (goingHome !== null && !isClosed))) {
    steps.push('take-up');
  }
  if (isOffice && notHereYet.includes(stage)) steps.push('cancel');
  if (goingHome === null && !isClosed && !notHereYet.includes(stage)) steps.push('send-home');
  return steps;
}

/** A stage as the next step names it: a bow packed on its way home is not a finished one. */
export function stepName(stage: Stage, goingHome: GoingHome | null): string {
  const label = stageLabels[stage];
  return stage === 'packed' && goingHome !== null ? `${label}, going home` : label;
}

/** A bow that nobody may string or draw on its way, nor when it is unpacked. */
export function isUnsafe(card: Pick<OrderCard, 'openStops'>, kind: GoingHome | null): boolean {
  return card.openStops > 0 || kind === 'broken';
}

type Sent = Pick<OrderCard, 'stage' | 'route' | 'hold' | 'openStops'>;

/** What sending a bow home does, one sentence each. */
export function whatSendingDoes(card: Sent, kind: GoingHome | null): string[] {
  const way = card.route.includes('collected') ? 'collected over the counter' : 'sent by parcel';
  const packed = card.stage === 'packed';
  return [
    packed
      ? `It stays packed until it is ${way}.`
      : `It stays in ${stageLabels[card.stage]}; next it is packed and ${way}. The rest of the work is left out.`,
    'No final check is asked for. What was found is told to the customer before it is packed.',
    ...(card.hold === null ? [] : ['The hold is released.']),
    ...(isUnsafe(card, kind) ? ['The return tag says DO NOT STRING OR DRAW.'] : []),
  ];
}
