import type { LifeEvent } from '../../../shared/contract/bow-life.ts';
import { closedStages, type Stage, stageLabels } from '../../../shared/stages.ts';
import type { OpenShop } from '../../storage/context.ts';
import type { IncidentRow } from '../../storage/tables.ts';
import { joined, lifeEvent } from './life-event.ts';

/** Parcels of the orders of this bow. */
export async function shipmentEvents(shop: OpenShop, bowId: string): Promise<LifeEvent[]> {
  const rows = await shop.read
    .selectFrom('shipment')
    .innerJoin('person', 'person.id', 'shipment.person_id')
    .innerJoin('shop_order', 'shop_order.id', 'shipment.order_id')
    .selectAll('shipment')
    .select(['person.name as person_name', 'shop_order.number as order_number'])
    .where('shop_order.bow_id', '=', bowId)
    .execute();
  return rows.map((row) =>
    lifeEvent({
      id: row.id,
      at: row.recorded_at,
      kind: 'shipment',
      title: row.direction === 'in' ? 'Parcel here' : 'Parcel home',
      text: joined([
        row.carrier_name,
        row.tracking === '' ? '' : `tracking ${row.tracking}`,
        row.shipped_on === null ? '' : `sent ${row.shipped_on}`,
        row.delivered_on === null ? '' : `delivered ${row.delivered_on}`,
      ]),
      personName: row.person_name,
      order: { id: row.order_id, number: row.order_number },
      struckReason: row.struck_reason,
    }),
  );
}

const incidentWords: Record<IncidentRow['kind'], string> = {
  'damaged-here': 'Damaged in the shop',
  'damaged-in-transit': 'Damaged on the way',
  'lost-in-transit': 'Lost on the way',
};

/** Incidents with this bow, also those noted before anybody knew which bow it was. */
export async function incidentEvents(shop: OpenShop, bowId: string): Promise<LifeEvent[]> {
  const rows = await shop.read
    .selectFrom('incident')
    .innerJoin('person', 'person.id', 'incident.found_by')
    .innerJoin('shop_order', 'shop_order.id', 'incident.order_id')
    .selectAll('incident')
    .select(['person.name as person_name', 'shop_order.number as order_number'])
    .where((eb) =>
      eb.or([
        eb('incident.bow_id', '=', bowId),
        eb.and([eb('incident.bow_id', 'is', null), eb('shop_order.bow_id', '=', bowId)]),
      ]),
    )
    .execute();
  return rows.map((row) =>
    lifeEvent({
      id: row.id,
      at: row.found_at,
      kind: 'incident',
      title: `${incidentWords[row.kind]}: ${row.what}`,
      text: row.settled_at === null ? row.remedy : `${row.remedy}\nSettled: ${row.settled_how}`,
      personName: row.person_name,
      order: { id: row.order_id, number: row.order_number },
    }),
  );
}

/** Markings the owner agreed to, with the words that were to be written on the bow. */
export async function markingEvents(shop: OpenShop, bowId: string): Promise<LifeEvent[]> {
  const rows = await shop.read
    .selectFrom('consent_answer')
    .innerJoin('consent', 'consent.id', 'consent_answer.consent_id')
    .innerJoin('person', 'person.id', 'consent_answer.recorded_by')
    .innerJoin('shop_order', 'shop_order.id', 'consent.order_id')
    .select(['consent_answer.id', 'consent_answer.answered_at', 'consent_answer.answered_by'])
    .select(['consent.subject', 'person.name', 'shop_order.number'])
    .select('consent.order_id')
    .where('shop_order.bow_id', '=', bowId)
    .where('consent.kind', '=', 'marking-approval')
    .where('consent_answer.answer', '=', 'granted')
    .execute();
  return rows.map((row) =>
    lifeEvent({
      id: row.id,
      at: row.answered_at,
      kind: 'marking',
      title: `Marking approved by ${row.answered_by}`,
      text: row.subject,
      personName: row.name,
      order: { id: row.order_id, number: row.number },
    }),
  );
}

const onTheWay: readonly Stage[] = ['requested', 'in-mail'];
const away: readonly Stage[] = ['shipped', 'collected'];

/** What a move means for where the bow is; null where it stays in the shop, or never came. */
function moveTitle(from: Stage | null, to: Stage): string | null {
  if (away.includes(to)) return stageLabels[to];
  if (from !== null && away.includes(from)) return `Back from "${stageLabels[from]}"`;
  const wasHere = from !== null && !onTheWay.includes(from) && !closedStages.includes(from);
  if (wasHere || onTheWay.includes(to) || to === 'cancelled') return null;
  return stageLabels.arrived;
}

/** When the bow came and when it left, by the moves of its orders. */
export async function moveEvents(shop: OpenShop, bowId: string): Promise<LifeEvent[]> {
  const rows = await shop.read
    .selectFrom('order_history')
    .innerJoin('person', 'person.id', 'order_history.person_id')
    .innerJoin('shop_order', 'shop_order.id', 'order_history.order_id')
    .selectAll('order_history')
    .select(['person.name as person_name', 'shop_order.number as order_number'])
    .where('shop_order.bow_id', '=', bowId)
    .where('order_history.to_stage', 'is not', null)
    .execute();
  return rows.flatMap((row) => {
    const title = row.to_stage === null ? null : moveTitle(row.from_stage, row.to_stage);
    if (title === null) return [];
    return lifeEvent({
      id: row.id,
      at: row.at,
      kind: 'move',
      title,
      text: row.reason ?? '',
      personName: row.person_name,
      order: { id: row.order_id, number: row.order_number },
    });
  });
}
