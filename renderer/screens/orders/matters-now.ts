import type { OrderDetail } from '../../../shared/contract/orders.ts';
import { closedStages, type Stage } from '../../../shared/stages.ts';
import type { FormPlace } from './open-forms.ts';

export type Order = Pick<
  OrderDetail,
  'arrival' | 'findings' | 'holds' | 'incidents' | 'next' | 'services' | 'tasks' | 'undershoot'
> & {
  card: Pick<
    OrderDetail['card'],
    'stage' | 'goingHome' | 'customerId' | 'route' | 'waitingConsents'
  >;
};

/** Stages whose work is done in a section, whether the next gate misses something there or not. */
const worked: Partial<Record<FormPlace, readonly Stage[]>> = {
  weighings: ['arrived', 'agreed', 'weight-work', 'strip-sand'],
  'weight-plan': ['arrived', 'agreed', 'weight-work'],
  geometry: ['agreed', 'weight-work'],
  'bench-records': ['weight-work', 'strip-sand'],
  finish: ['strip-sand', 'finish', 'cure'],
  'bench-log': ['finish'],
  photos: ['requested', 'in-mail', 'arrived', 'packed'],
  consents: ['arrived'],
  inscription: ['requested', 'in-mail', 'arrived', 'finish'],
  'final-check': ['final-check'],
  shipping: ['packed'],
  price: ['requested', 'in-mail', 'arrived', 'final-check', 'packed'],
};

/** Something there waits, in whatever stage the order stands. */
function isWaiting(place: FormPlace, order: Order): boolean {
  switch (place) {
    case 'arrival':
      return order.arrival !== null && order.arrival.completedAt === null;
    case 'undershoot':
      return order.undershoot.now !== null;
    case 'findings':
      return order.findings.some(({ resolvedAt }) => resolvedAt === null);
    case 'incidents':
      return order.incidents.some(({ settledAt }) => settledAt === null);
    case 'consents':
      return order.card.waitingConsents > 0;
    case 'hold':
      return order.holds.some(({ releasedAt }) => releasedAt === null);
    case 'tasks':
      return order.tasks.some(({ doneAt }) => doneAt === null);
    default:
      return false;
  }
}

const needsWeight: readonly FormPlace[] = ['weighings', 'weight-plan', 'geometry', 'bench-records'];

/** A section of work the order has no use for: no weight comes off, or the bow goes home as it is. */
function isIdle(place: FormPlace, { services, card }: Order): boolean {
  if (place === 'finish') return !card.route.includes('finish');
  if (place === 'inscription' || place === 'bench-log') return !services.includes('re-mark');
  if (place === 'shipping') return card.route.includes('collected');
  if (place === 'consents') return card.customerId === null;
  if (needsWeight.includes(place) && !services.includes('reduce-weight')) return true;
  return card.goingHome !== null && place !== 'photos';
}

/** Whether a section of the order page stands open in this stage; the others are one line each. */
export function mattersNow(place: FormPlace, order: Order): boolean {
  const { stage, goingHome } = order.card;
  if (order.next?.missing.some(({ section }) => section === place)) return true;
  if (isWaiting(place, order)) return !closedStages.includes(stage) || place === 'incidents';
  if (isIdle(place, order)) return false;
  if (place === 'shipping' && goingHome !== null) return !closedStages.includes(stage);
  return worked[place]?.includes(stage) ?? false;
}
