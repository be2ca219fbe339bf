import type { Kysely } from 'kysely';
import type { FinishSheet } from '../../finish/sheet.ts';
import type {
  AirReadingRow,
  CoatRow,
  OrderFinishRow,
  SandingRow,
  SurfaceReadingRow,
  Tables,
} from '../../storage/tables.ts';
import { sheetOf } from './system-row.ts';

type Db = Kysely<Tables>;

/** A coat with what its session says, and the sheet it was put on by. */
export interface StoredCoat extends CoatRow {
  finish_system_id: string;
  system_name: string;
  batch_id: string | null;
  batch_name: string | null;
  override_reason: string | null;
  person_name: string;
  sheet: FinishSheet;
  /** Air of its session; null where none was read. */
  air: AirReadingRow | null;
}

export type StoredSanding = SandingRow & { person_name: string };
export type StoredSurface = SurfaceReadingRow & { person_name: string };
export type StoredChoice = OrderFinishRow & {
  person_name: string;
  /** The system's sheet as it is now. */
  system_sheet_json: string;
};

/** What the finish room wrote down of one order, oldest first. */
export interface FinishRows {
  chosen: StoredChoice | null;
  sandings: readonly StoredSanding[];
  coats: readonly StoredCoat[];
  surfaces: readonly StoredSurface[];
}

export const noFinishRows: FinishRows = { chosen: null, sandings: [], coats: [], surfaces: [] };

function choices(db: Db, orderIds: readonly string[]): Promise<StoredChoice[]> {
  return db
    .selectFrom('order_finish')
    .innerJoin('person', 'person.id', 'order_finish.person_id')
    .innerJoin('finish_system', 'finish_system.id', 'order_finish.finish_system_id')
    .selectAll('order_finish')
    .select(['person.name as person_name', 'finish_system.sheet_json as system_sheet_json'])
    .where('order_finish.order_id', 'in', orderIds)
    .execute();
}

async function airOfSessions(db: Db, ids: readonly string[]): Promise<Map<string, AirReadingRow>> {
  if (ids.length === 0) return new Map();
  const rows = await db.selectFrom('air_reading').selectAll().where('id', 'in', ids).execute();
  return new Map(rows.map((row) => [row.id, row]));
}

/** Batches keep the sheet they were mixed by, orders the one they chose; else the system's own. */
async function coats(
  db: Db,
  orderIds: readonly string[],
  chosen: ReadonlyMap<string, StoredChoice>,
): Promise<StoredCoat[]> {
  const rows = await db
    .selectFrom('coat')
    .innerJoin('spray_session', 'spray_session.id', 'coat.session_id')
    .innerJoin('finish_system', 'finish_system.id', 'spray_session.finish_system_id')
    .innerJoin('person', 'person.id', 'spray_session.person_id')
    .leftJoin('batch', 'batch.id', 'spray_session.batch_id')
    .selectAll('coat')
    .select(['spray_session.finish_system_id', 'spray_session.batch_id'])
    .select(['spray_session.override_reason', 'spray_session.air_reading_id'])
    .select(['finish_system.name as system_name', 'finish_system.sheet_json as system_sheet'])
    .select(['batch.name as batch_name', 'batch.sheet_json as batch_sheet'])
    .select('person.name as person_name')
    .where('coat.order_id', 'in', orderIds)
    .orderBy('coat.at')
    .orderBy('coat.id')
    .execute();
  const airs = await airOfSessions(db, [
    ...new Set(rows.flatMap((row) => (row.air_reading_id === null ? [] : [row.air_reading_id]))),
  ]);
  return rows.map(({ system_sheet, batch_sheet, air_reading_id, ...row }) => {
    const choice = chosen.get(row.order_id);
    const own = choice?.finish_system_id === row.finish_system_id ? choice.sheet_json : null;
    return {
      ...row,
      sheet: sheetOf({ sheet_json: batch_sheet ?? own ?? system_sheet }),
      air: airs.get(air_reading_id ?? '') ?? null,
    };
  });
}

/** Rows of many orders in one query a table; every order asked for is in the answer. */
export async function storedFinish(
  db: Db,
  orderIds: readonly string[],
): Promise<Map<string, FinishRows>> {
  if (orderIds.length === 0) return new Map();
  const chosen = new Map((await choices(db, orderIds)).map((row) => [row.order_id, row]));
  const coated = Map.groupBy(await coats(db, orderIds, chosen), (row) => row.order_id);
  const sandings = await db
    .selectFrom('sanding')
    .innerJoin('person', 'person.id', 'sanding.person_id')
    .selectAll('sanding')
    .select('person.name as person_name')
    .where('order_id', 'in', orderIds)
    .orderBy('at')
    .orderBy('sanding.id')
    .execute();
  const surfaces = await db
    .selectFrom('surface_reading')
    .innerJoin('person', 'person.id', 'surface_reading.person_id')
    .selectAll('surface_reading')
    .select('person.name as person_name')
    .where('order_id', 'in', orderIds)
    .orderBy('at')
    .orderBy('surface_reading.id')
    .execute();
  const sanded = Map.groupBy(sandings, (row) => row.order_id);
  const read = Map.groupBy(surfaces, (row) => row.order_id);
  return new Map(
    orderIds.map((id) => [
      id,
      {
        chosen: chosen.get(id) ?? null,
        sandings: sanded.get(id) ?? [],
        coats: coated.get(id) ?? [],
        surfaces: read.get(id) ?? [],
      },
    ]),
  );
}

/** Rows of one order. */
export async function storedFinishOf(db: Db, orderId: string): Promise<FinishRows> {
  return (await storedFinish(db, [orderId])).get(orderId) ?? noFinishRows;
}

/** Readings of the room that stand, from an instant on, oldest first. */
export function airSince(db: Db, from: string): Promise<AirReadingRow[]> {
  return db
    .selectFrom('air_reading')
    .selectAll()
    .where('struck_reason', 'is', null)
    .where('at', '>=', from)
    .orderBy('at')
    .orderBy('id')
    .execute();
}
