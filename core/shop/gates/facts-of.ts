import type { EntryItem } from '../../../shared/entries.ts';
import { difference } from '../../../shared/measure.ts';
import type { InscriptionRow } from '../../storage/agreement-tables.ts';
import type {
  ArrivalRow,
  BelongingRow,
  BowRow,
  EntryRow,
  FindingRow,
  GlassCheckRow,
  OrderRow,
  PaymentRow,
  PriceLineRow,
  RemovalRow,
  ShipmentRow,
  TillerReadingRow,
  UndershootRow,
} from '../../storage/tables.ts';
import { consentStateNow } from '../consents/state.ts';
import type { StoredConsent } from '../consents/stored.ts';
import { subjectsOf } from '../consents/subject.ts';
import { checkSubjectOf } from '../final-check/subject.ts';
import type { OpenStop } from '../findings/open-stops.ts';
import type { RoomRows } from '../finish/room-rows.ts';
import type { FinishRows } from '../finish/stored.ts';
import { routeOf, servicesOf } from '../orders/order-json.ts';
import { openBalance } from '../prices/stored.ts';
import type { StoredReading } from '../readings/stored.ts';
import { sessionWeights, weightAtAmoDraw } from '../readings/weights.ts';
import { scaleErrorLimitLbf } from '../scales/scale-check.ts';
import { parcelOf } from '../shipments/parcel-of.ts';
import { noCoat } from './coat-state.ts';
import { finishStateOf } from './finish-state.ts';
import type { GateFacts, ParcelFacts } from './gate-facts.ts';

/** Everything on record of one order that a gate may look at; lists in the order they were recorded. */
export interface FactRows {
  order: OrderRow;
  bow: BowRow | null;
  arrival: ArrivalRow | null;
  belongings: readonly BelongingRow[];
  entries: readonly EntryRow[];
  findings: readonly FindingRow[];
  /** Open stop findings of the bow, whichever order they were noted on. */
  openStops: readonly OpenStop[];
  /** Findings that have a photograph. */
  picturedFindings: ReadonlySet<string>;
  readings: readonly StoredReading[];
  consents: readonly StoredConsent[];
  undershoots: readonly UndershootRow[];
  layout: InscriptionRow | null;
  /** Step a weight is rounded to on the bow, pound-force; shop policy. */
  markingRoundLbf: number;
  shipments: readonly ShipmentRow[];
  /** Lines of the price that stand, and payments that count. */
  priceLines: readonly PriceLineRow[];
  payments: readonly PaymentRow[];
  stationsMeasured: boolean;
  removals: readonly RemovalRow[];
  glassChecks: readonly GlassCheckRow[];
  tillerReadings: readonly TillerReadingRow[];
  finish: FinishRows;
  room: RoomRows;
  plan: GateFacts['plan'];
  openSurprise: boolean;
  openIncidents: number;
  /** Instant the last return tag was printed or saved. */
  tagMadeAt: string | null;
  addressKnown: boolean;
}

const alive = (row: { struck_reason: string | null }) => row.struck_reason === null;

function latestEntries(rows: readonly EntryRow[]): Map<EntryItem, EntryRow> {
  return new Map(rows.filter(alive).map((row) => [row.item, row]));
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

function parcelFacts(shipments: readonly ShipmentRow[]): ParcelFacts | null {
  const out = shipments.filter((row) => alive(row) && row.direction === 'out').at(-1);
  if (out === undefined) return null;
  const assessed =
    out.assessment_json === null
      ? null
      : (JSON.parse(out.assessment_json) as { refusals: readonly string[] });
  return {
    measured: parcelOf(out) !== null,
    assessed: assessed !== null,
    refusals: assessed?.refusals ?? [],
    tracking: out.tracking,
  };
}

type WeightFacts = Pick<
  GateFacts,
  | 'arrivalWeighed'
  | 'afterSandingLbf'
  | 'afterSandingWeighed'
  | 'undershootOffered'
  | 'measured'
  | 'lastRemovalAt'
  | 'tillerReadAt'
>;

/** The offer was made for this very shortfall: another weighing or target needs another offer. */
function offerFits(rows: FactRows, measuredLbf: number | null): boolean {
  const offer = rows.undershoots.filter(alive).at(-1);
  const { target_weight_lbf: target, target_draw_in: drawIn } = rows.order;
  if (offer === undefined || measuredLbf === null || target === null) return false;
  return (
    offer.draw_in === drawIn &&
    difference(offer.target_lbf, target) === 0 &&
    difference(offer.measured_lbf, measuredLbf) === 0
  );
}

function doneAt(rows: FactRows): string | null {
  return latest(...rows.removals.filter(alive).map((removal) => removal.done_at));
}

function benchFacts(rows: FactRows): Pick<GateFacts, 'plan' | 'glassCheck' | 'openSurprise'> {
  const check = rows.glassChecks.filter(alive).at(-1);
  return {
    plan: rows.plan,
    glassCheck: check === undefined ? null : { outcome: check.outcome, at: check.checked_at },
    openSurprise: rows.openSurprise,
  };
}

function weightFacts(rows: FactRows, entries: Map<EntryItem, EntryRow>): WeightFacts {
  const readings = rows.readings.filter(alive);
  const drawIn = rows.order.target_draw_in;
  const lastRemovalAt = doneAt(rows);
  const sinceBite = readings.filter(
    (reading) => lastRemovalAt === null || reading.weighed_at > lastRemovalAt,
  );
  const last = sinceBite.filter((reading) => reading.phase === 'after-sanding').at(-1);
  const afterSandingLbf =
    drawIn === null || last === undefined
      ? null
      : weightAtAmoDraw(last.pulls, last.draw_reference, drawIn);
  return {
    arrivalWeighed: readings.some(
      (reading) => reading.phase === 'arrival' && onCheckedScale(reading),
    ),
    afterSandingLbf,
    afterSandingWeighed: last !== undefined,
    undershootOffered: offerFits(rows, afterSandingLbf),
    measured: sinceBite
      .filter((reading) => reading.draw_reference === 'amo')
      .flatMap((reading) => sessionWeights(reading.pulls, reading.draw_reference)),
    lastRemovalAt,
    tillerReadAt: latest(
      entries.get('tiller-read')?.recorded_at,
      rows.tillerReadings.filter(alive).at(-1)?.read_at,
      readings.filter((reading) => reading.tiller_in !== null).at(-1)?.weighed_at,
    ),
  };
}

function arrivalFacts({ arrival, belongings }: FactRows) {
  const nothingCame = arrival?.nothing_came_along === 1;
  return {
    boxOpened: arrival !== null,
    conditionRecorded: (arrival?.condition ?? '').trim() !== '',
    belongingsListed: nothingCame || belongings.length > 0,
    belongingsBack: belongings.every((each) => each.back_at !== null),
    arrivalChecked: arrival !== null && arrival.completed_at !== null,
  };
}

function findingFacts({ findings, openStops, picturedFindings, tagMadeAt }: FactRows) {
  const lastStop = latest(...openStops.map((stop) => stop.foundAt));
  return {
    openStops: openStops.length,
    openWatches: findings.filter(
      (finding) => finding.grade === 'watch' && finding.resolved_at === null,
    ).length,
    anyFinding: findings.length > 0,
    stopsPictured: openStops.every((stop) => picturedFindings.has(stop.id)),
    tagSinceStop: lastStop === null || (tagMadeAt !== null && tagMadeAt > lastStop),
  };
}

/** Pure: the facts that the given rows amount to. */
export function factsOf(rows: FactRows): GateFacts {
  const { order } = rows;
  const entries = latestEntries(rows.entries);
  const subjects = subjectsOf({
    order,
    findings: rows.findings,
    readings: rows.readings,
    undershoots: rows.undershoots,
    priceLines: rows.priceLines,
    layout: rows.layout,
  });
  const finish = finishStateOf(rows.finish, rows.room);
  const lastCoatAt = latest(
    finish.lastCoatAt,
    entries.get('coat')?.recorded_at,
    entries.get('first-clear')?.recorded_at,
  );
  return {
    services: servicesOf(order),
    route: routeOf(order),
    stage: order.stage,
    goingHome: order.going_home,
    shopsOwn: order.customer_id === null,
    bowIdentified: order.bow_id !== null,
    checkSubject: checkSubjectOf(order, rows.bow, doneAt(rows) !== null),
    ...arrivalFacts(rows),
    ...findingFacts(rows),
    targetLbf: order.target_weight_lbf,
    targetDrawIn: order.target_draw_in,
    inscription: order.inscription,
    markingRoundLbf: rows.markingRoundLbf,
    shipToKnown: rows.addressKnown,
    consent: (kind) => consentStateNow(rows.consents, kind, subjects[kind]),
    entry: (item) => {
      const row = entries.get(item);
      return row === undefined ? null : { outcome: row.outcome, recordedAt: row.recorded_at };
    },
    ...weightFacts(rows, entries),
    ...benchFacts(rows),
    stationsMeasured: rows.stationsMeasured,
    finish,
    coat: noCoat,
    coated: lastCoatAt !== null,
    lastWorkAt: latest(lastCoatAt, doneAt(rows)),
    openIncidents: rows.openIncidents,
    parcel: parcelFacts(rows.shipments),
    balanceCents: openBalance(order, rows.payments),
  };
}
