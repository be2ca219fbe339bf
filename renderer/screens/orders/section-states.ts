import type { GeometryVersion } from '../../../shared/contract/geometry.ts';
import type { OrderDetail } from '../../../shared/contract/orders.ts';
import { fullDay, momentText } from '../../parts/days.ts';
import { weightsLine } from '../../parts/weights-line.ts';
import { gradeLabels, gradeOrder } from './findings/grades.ts';

/** How each section of the order page stands, in a few words: its one line while it is folded. */

const parts = (...words: readonly string[]) => words.filter((word) => word !== '').join(', ');
const some = (count: number, words: string) => (count === 0 ? '' : `${count} ${words}`);

export function arrivalState({ arrival }: Pick<OrderDetail, 'arrival'>): string {
  if (arrival === null) return 'not unpacked yet';
  if (arrival.completedAt === null) return 'check not complete';
  return `check complete ${momentText(arrival.completedAt)}`;
}

export function weightState({
  card,
  readings,
}: {
  card: Pick<OrderDetail['card'], 'weights'>;
  readings: OrderDetail['readings'];
}): string {
  const counted = readings.filter(({ struckReason }) => struckReason === null);
  const line = weightsLine(card.weights);
  return counted.length === 0
    ? parts('not weighed yet', line === '' ? '' : `target ${line}`)
    : line;
}

/** Bites that count, and the last look at the glass. */
export function benchState({ removals, glassChecks }: OrderDetail['bench']): string {
  const bites = removals.filter(({ struckReason }) => struckReason === null).length;
  const glass = glassChecks.find(({ struckReason }) => struckReason === null);
  const failed = glass?.outcome === 'not-ok' ? 'the last glass check failed' : '';
  return parts(
    bites === 0 ? 'no bite taken' : `${bites} ${bites === 1 ? 'bite' : 'bites'}`,
    failed,
  );
}

export function findingsState({ findings }: Pick<OrderDetail, 'findings'>): string {
  const open = findings.filter(({ resolvedAt }) => resolvedAt === null);
  const grades = gradeOrder.map((grade) =>
    some(open.filter((each) => each.grade === grade).length, gradeLabels[grade].toLowerCase()),
  );
  return parts(...grades, some(findings.length - open.length, 'resolved')) || 'none so far';
}

export function incidentsState({ incidents }: Pick<OrderDetail, 'incidents'>): string {
  const open = incidents.filter(({ settledAt }) => settledAt === null).length;
  return parts(some(open, 'not settled'), some(incidents.length - open, 'settled')) || 'none';
}

export function consentsState({
  card,
  consents,
}: {
  card: Pick<OrderDetail['card'], 'customerId'>;
  consents: readonly Pick<OrderDetail['consents'][number], 'state'>[];
}): string {
  if (card.customerId === null && consents.length === 0) return 'nobody to ask';
  const many = (state: OrderDetail['consents'][number]['state']) =>
    consents.filter((consent) => consent.state === state).length;
  return (
    parts(
      some(many('waiting'), 'without an answer'),
      some(many('granted'), 'granted'),
      some(many('declined'), 'declined'),
      some(many('withdrawn'), 'withdrawn'),
      some(many('outdated'), 'no longer fitting'),
    ) || 'nothing asked yet'
  );
}

export function inscriptionState({
  inscription,
  services,
}: Pick<OrderDetail, 'inscription' | 'services'>): string {
  const lines = inscription.split('\n').filter((line) => line.trim() !== '');
  if (lines.length > 0) return lines.join(' / ');
  return services.includes('re-mark') ? 'no lines yet' : 'no re-marking in this order';
}

export function shippingState({
  card,
  shipments,
}: {
  card: Pick<OrderDetail['card'], 'route'>;
  shipments: OrderDetail['shipments'];
}): string {
  const out = shipments.find((each) => each.direction === 'out' && each.struckReason === null);
  if (out === undefined) {
    return card.route.includes('collected') ? 'collected here' : 'parcel not measured yet';
  }
  const { carrierName, tracking, shippedOn } = out;
  return parts(
    carrierName,
    tracking,
    shippedOn === null ? 'not shipped yet' : `shipped ${fullDay(shippedOn)}`,
  );
}

export function holdState({ holds }: Pick<OrderDetail, 'holds'>): string {
  const past = holds.filter(({ releasedAt }) => releasedAt !== null).length;
  if (holds.length > past) return '';
  return past === 0 ? 'not on hold' : `not on hold, was ${past === 1 ? 'once' : `${past} times`}`;
}

export function tasksState({ tasks }: Pick<OrderDetail, 'tasks'>): string {
  const open = tasks.filter(({ doneAt }) => doneAt === null).length;
  return parts(some(open, 'open'), some(tasks.length - open, 'done')) || 'none';
}

export function photosState(count: number | undefined): string {
  if (count === undefined) return '';
  return count === 0 ? 'none yet' : String(count);
}

/** Of the versions of this order's limbs, newest first; undefined while they are read. */
export function geometryState(
  versions: readonly Pick<GeometryVersion, 'version' | 'measuredAt' | 'struckReason'>[] | undefined,
): string {
  if (versions === undefined) return '';
  const newest = versions.find(({ struckReason }) => struckReason === null);
  if (newest === undefined) return 'not measured yet';
  return `version ${newest.version}, ${momentText(newest.measuredAt)}`;
}
