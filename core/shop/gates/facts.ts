import type { ConsentKind, ConsentState } from '../../../shared/consents.ts';
import type { EntryItem } from '../../../shared/entries.ts';
import type { Service, Stage } from '../../../shared/stages.ts';
import type { OpenShop } from '../../storage/context.ts';
import type { EntryRow, FindingRow, OrderRow } from '../../storage/tables.ts';
import { consentStateNow } from '../consents/state.ts';
import { type StoredConsent, storedConsents } from '../consents/stored.ts';
import { subjectsOf } from '../consents/subject.ts';
import { openStops, stopsOf } from '../findings/open-stops.ts';
import { storedFindings } from '../findings/stored.ts';
import { routeOf, servicesOf } from '../orders/order-json.ts';
import { type StoredReading, storedReadings } from '../readings/stored.ts';
import { sessionWeights, weightAtAmoDraw } from '../readings/weights.ts';
import { scaleErrorLimitLbf } from '../scales/scale-check.ts';
import type { MeasuredWeight } from './inscribed-weight.ts';

/** What the gates look at: plain facts of one order, read once. */
export interface GateFacts {
  services: readonly Service[];
  route: readonly Stage[];
  /** The owner of the bow is the shop: there is nobody to ask. */
  shopsOwn: boolean;
  bowIdentified: boolean;
  openStops: number;
  openWatches: number;
  targetLbf: number | null;
  targetDrawIn: number | null;
  inscription: string;
  shipToKnown: boolean;
  consent(kind: ConsentKind): ConsentState | 'none';
  /** Latest entry of the kind that was not struck out. */
  entry(item: EntryItem): { outcome: 'ok' | 'not-ok'; recordedAt: string } | null;
  /** Arrival weighing on a scale checked inside its limit. */
  arrivalWeighed: boolean;
  /** Latest weighing after sanding and the last bite, AMO, at the target's draw, pound-force. */
  afterSandingLbf: number | null;
  afterSandingWeighed: boolean;
  /** Every AMO weight measured since the last bite, oldest first. */
  measured: readonly MeasuredWeight[];
  /** Instant of the latest bite, tiller reading and glass check; null where there is none. */
  lastRemovalAt: string | null;
  tillerReadAt: string | null;
}

const alive = (reading: StoredReading) => reading.struck_reason === null;

function latestEntries(rows: readonly EntryRow[]): Map<EntryItem, EntryRow> {
  const kept = rows.filter((row) => row.struck_reason === null);
  return new Map(kept.map((row) => [row.item, row]));
}

function onCheckedScale(reading: StoredReading): boolean {
  return (
    reading.scale_error_lbf !== null && Math.abs(reading.scale_error_lbf) <= scaleErrorLimitLbf
  );
}

function latest(...instants: (string | null | undefined)[]): string | null {
  return (
    instants
      .filter((at): at is string => typeof at === 'string')
      .sort()
      .at(-1) ?? null
  );
}

interface Rows {
  order: OrderRow;
  entries: EntryRow[];
  findings: FindingRow[];
  /** Open stop findings of the bow, whichever order they were noted on. */
  openStops: number;
  readings: StoredReading[];
  consents: StoredConsent[];
  addressKnown: boolean;
  ownerId: string | null;
}

/** Pure: the facts that the given rows amount to. Rows are in the order they were recorded. */
export function factsOf(rows: Rows): GateFacts {
  const { order } = rows;
  const entries = latestEntries(rows.entries);
  const readings = rows.readings.filter(alive);
  const lastRemovalAt = entries.get('removal')?.recorded_at ?? null;
  const sinceBite = readings.filter(
    (reading) => lastRemovalAt === null || reading.weighed_at > lastRemovalAt,
  );
  const sanded = sinceBite.filter((reading) => reading.phase === 'after-sanding');
  const subjects = subjectsOf({ order, findings: rows.findings, readings });
  const drawIn = order.target_draw_in;
  const last = sanded.at(-1);
  const open = rows.findings.filter((finding) => finding.resolved_at === null);
  return {
    services: servicesOf(order),
    route: routeOf(order),
    shopsOwn: rows.ownerId === null,
    bowIdentified: order.bow_id !== null,
    openStops: rows.openStops,
    openWatches: open.filter((finding) => finding.grade === 'watch').length,
    targetLbf: order.target_weight_lbf,
    targetDrawIn: drawIn,
    inscription: order.inscription,
    shipToKnown: rows.addressKnown,
    consent: (kind) => consentStateNow(rows.consents, kind, subjects[kind]),
    entry: (item) => {
      const row = entries.get(item);
      return row === undefined ? null : { outcome: row.outcome, recordedAt: row.recorded_at };
    },
    arrivalWeighed: readings.some(
      (reading) => reading.phase === 'arrival' && onCheckedScale(reading),
    ),
    afterSandingLbf:
      drawIn === null || last === undefined
        ? null
        : weightAtAmoDraw(last.pulls, last.draw_reference, drawIn),
    afterSandingWeighed: last !== undefined,
    measured: sinceBite
      .filter((reading) => reading.draw_reference === 'amo')
      .flatMap((reading) => sessionWeights(reading.pulls, reading.draw_reference)),
    lastRemovalAt,
    tillerReadAt: latest(
      entries.get('tiller-read')?.recorded_at,
      readings.filter((reading) => reading.tiller_in !== null).at(-1)?.weighed_at,
    ),
  };
}

/** Reads everything a gate may look at, from one connection, so that a command sees its own transaction. */
export async function readFacts(db: OpenShop['read'], order: OrderRow): Promise<GateFacts> {
  const entries = await db
    .selectFrom('entry')
    .selectAll()
    .where('order_id', '=', order.id)
    .orderBy('recorded_at')
    .orderBy('id')
    .execute();
  const customer =
    order.customer_id === null
      ? undefined
      : await db
          .selectFrom('customer')
          .select(['street', 'city'])
          .where('id', '=', order.customer_id)
          .executeTakeFirst();
  const addressed = customer !== undefined && customer.street !== '' && customer.city !== '';
  return factsOf({
    order,
    entries,
    findings: await storedFindings(db, order.id),
    openStops: stopsOf(await openStops(db), order).length,
    readings: await storedReadings(db, [order.id]),
    consents: await storedConsents(db, [order.id]),
    addressKnown: order.ship_to.trim() !== '' || addressed,
    ownerId: order.customer_id,
  });
}
