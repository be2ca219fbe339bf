import type { Incident } from '../../../shared/contract/incidents.ts';
import type { OpenShop } from '../../storage/context.ts';

/** Incidents of an order: open ones first, then the newest. */
export async function incidentsOf(shop: OpenShop, orderId: string): Promise<Incident[]> {
  const rows = await shop.read
    .selectFrom('incident')
    .innerJoin('person', 'person.id', 'incident.found_by')
    .selectAll('incident')
    .select('person.name as person_name')
    .where('order_id', '=', orderId)
    .orderBy((eb) => eb('settled_at', 'is not', null))
    .orderBy('found_at', 'desc')
    .orderBy('incident.id', 'desc')
    .limit(200)
    .execute();
  return rows.map((row) => ({
    id: row.id,
    rowVersion: row.row_version,
    kind: row.kind,
    happenedOn: row.happened_on,
    what: row.what,
    findingId: row.finding_id,
    foundAt: row.found_at,
    foundBy: row.person_name,
    claimWith: row.claim_with,
    claimUntil: row.claim_until,
    claimFiledOn: row.claim_filed_on,
    claimNumber: row.claim_number,
    ownerToldOn: row.owner_told_on,
    ownerToldHow: row.owner_told_how,
    remedy: row.remedy,
    settledAt: row.settled_at,
    settledHow: row.settled_how,
  }));
}
