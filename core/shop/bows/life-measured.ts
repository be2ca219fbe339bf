import type { LifeEvent, LifeWeight } from '../../../shared/contract/bow-life.ts';
import type { GeometryVersion } from '../../../shared/contract/geometry.ts';
import { decimal, inchFraction } from '../../../shared/measure.ts';
import { dayOf } from '../day.ts';
import { phaseWords } from '../readings/phases.ts';
import type { StoredReading } from '../readings/stored.ts';
import { sessionWeights } from '../readings/weights.ts';
import { joined, type LifeNames, lifeEvent } from './life-event.ts';

const sized = (what: string, inches: number | null) =>
  inches === null ? '' : `${what} ${inchFraction(inches)}"`;

function conditions(reading: StoredReading, names: LifeNames): string {
  return joined([
    names.limbSets.get(reading.limb_set_id ?? '') ?? '',
    reading.riser_note === '' ? '' : `on ${reading.riser_note}`,
    sized('brace', reading.brace_in),
    sized('tiller', reading.tiller_in),
    reading.string_track,
    reading.moisture_pct === null ? '' : `moisture ${decimal(reading.moisture_pct)} %`,
  ]);
}

export function weighingEvents(readings: readonly StoredReading[], names: LifeNames): LifeEvent[] {
  return readings.map((reading) => {
    const weights = sessionWeights(reading.pulls, reading.draw_reference);
    const texts = weights.map((weight) => weight.text).join(', ');
    return lifeEvent({
      id: reading.id,
      at: reading.weighed_at,
      kind: 'weighing',
      title: `Weighed, ${phaseWords[reading.phase]}: ${texts}`,
      text: conditions(reading, names),
      personName: names.people.get(reading.person_id) ?? '',
      order: { id: reading.order_id, number: names.orders.get(reading.order_id) ?? '' },
      struckReason: reading.struck_reason,
    });
  });
}

/** Every weight that stands, newest first; no weight is carried over to another draw or reference. */
export function lifeWeights(readings: readonly StoredReading[], names: LifeNames): LifeWeight[] {
  return readings
    .filter((reading) => reading.struck_reason === null)
    .toReversed()
    .flatMap((reading) =>
      sessionWeights(reading.pulls, reading.draw_reference).map((weight) => ({
        readingId: reading.id,
        on: dayOf(reading.weighed_at),
        phase: phaseWords[reading.phase],
        forceLbf: weight.forceLbf,
        drawIn: weight.drawIn,
        drawReference: reading.draw_reference,
        text: weight.text,
        orderNumber: names.orders.get(reading.order_id) ?? '',
        limbSetName: names.limbSets.get(reading.limb_set_id ?? '') ?? null,
        riserNote: reading.riser_note,
      })),
    )
    .slice(0, 4000);
}

export function geometryEvents(versions: readonly GeometryVersion[]): LifeEvent[] {
  return versions.map((version) =>
    lifeEvent({
      id: version.id,
      at: version.measuredAt,
      kind: 'geometry',
      title: `Limbs measured, version ${version.version}`,
      text: joined([
        version.limbSetName ?? '',
        `${version.stations.length} stations`,
        version.note,
      ]),
      personName: version.personName,
      order:
        version.orderId === null || version.orderNumber === null
          ? null
          : { id: version.orderId, number: version.orderNumber },
      struckReason: version.struckReason,
    }),
  );
}
