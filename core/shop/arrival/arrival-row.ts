import type { ArrivalFields, ArrivalRecord, Belonging } from '../../../shared/contract/arrival.ts';
import type { OpenShop } from '../../storage/context.ts';
import type { ArrivalRow } from '../../storage/tables.ts';

type ArrivalColumns = Omit<
  ArrivalRow,
  'id' | 'row_version' | 'order_id' | 'person_id' | 'completed_at' | 'completed_by'
>;

export function arrivalColumns(fields: ArrivalFields): ArrivalColumns {
  return {
    opened_on: fields.openedOn,
    came_by: fields.cameBy,
    packaging: fields.packaging,
    packaging_kept: fields.packagingKept ? 1 : 0,
    packaging_damaged: fields.packagingDamaged ? 1 : 0,
    condition: fields.condition,
    nothing_came_along: fields.nothingCameAlong ? 1 : 0,
    resting_since: fields.restingSince,
    looked_over: fields.lookedOver ? 1 : 0,
    strung: fields.strung,
    not_strung_because: fields.notStrungBecause,
    alignment: fields.alignment,
    brace_in: fields.braceIn,
    tiller_in: fields.tillerIn,
    string_track: fields.stringTrack,
    note: fields.note,
  };
}

export function arrivalFieldsOf(row: ArrivalRow): ArrivalFields {
  return {
    openedOn: row.opened_on,
    cameBy: row.came_by,
    packaging: row.packaging,
    packagingKept: row.packaging_kept === 1,
    packagingDamaged: row.packaging_damaged === 1,
    condition: row.condition,
    nothingCameAlong: row.nothing_came_along === 1,
    restingSince: row.resting_since,
    lookedOver: row.looked_over === 1,
    strung: row.strung,
    notStrungBecause: row.not_strung_because,
    alignment: row.alignment,
    braceIn: row.brace_in,
    tillerIn: row.tiller_in,
    stringTrack: row.string_track,
    note: row.note,
  };
}

export async function arrivalRowOf(
  db: OpenShop['read'],
  orderId: string,
): Promise<ArrivalRow | undefined> {
  return db.selectFrom('arrival').selectAll().where('order_id', '=', orderId).executeTakeFirst();
}

/** What was recorded at the unpacking table; null while the box is closed. */
export async function arrivalOf(shop: OpenShop, orderId: string): Promise<ArrivalRecord | null> {
  const row = await shop.read
    .selectFrom('arrival')
    .innerJoin('person', 'person.id', 'arrival.person_id')
    .leftJoin('person as completer', 'completer.id', 'arrival.completed_by')
    .selectAll('arrival')
    .select(['person.name as person_name', 'completer.name as completer_name'])
    .where('order_id', '=', orderId)
    .executeTakeFirst();
  if (row === undefined) return null;
  return {
    id: row.id,
    rowVersion: row.row_version,
    ...arrivalFieldsOf(row),
    personName: row.person_name,
    completedAt: row.completed_at,
    completedBy: row.completer_name,
  };
}

/** What came along with the bow, in the order it was listed. */
export async function belongingsOf(shop: OpenShop, orderId: string): Promise<Belonging[]> {
  const rows = await shop.read
    .selectFrom('belonging')
    .leftJoin('person', 'person.id', 'belonging.back_by')
    .selectAll('belonging')
    .select('person.name as person_name')
    .where('order_id', '=', orderId)
    .orderBy('belonging.id')
    .limit(500)
    .execute();
  return rows.map((row) => ({
    id: row.id,
    rowVersion: row.row_version,
    what: row.what,
    backAt: row.back_at,
    backBy: row.person_name,
    backNote: row.back_note,
  }));
}
