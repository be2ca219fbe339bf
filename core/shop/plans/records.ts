import type { OpenShop } from '../../storage/context.ts';
import type {
  BowRow,
  GeometryRow,
  GeometryStationRow,
  LimbSetRow,
  OrderRow,
} from '../../storage/tables.ts';
import { type StoredReading, storedReadings, storedReadingsOfBow } from '../readings/stored.ts';
import { sessionWeights, weightAtAmoDraw } from '../readings/weights.ts';
import { notFound } from '../record.ts';
import { latestGeometry } from './fit.ts';

type Db = OpenShop['read'];

/** What a plan is started from. */
export interface StartRecords {
  order: OrderRow | null;
  bow: BowRow;
  limbSet: LimbSetRow | null;
  geometry: GeometryRow | null;
  stations: readonly GeometryStationRow[];
  /** The newest weighing of these limbs that stands, in AMO at the draw. */
  reading: StoredReading | null;
  weightLbf: number | null;
  resolutionLbf: number;
  drawIn: number;
  tillerIn: number | null;
  braceIn: number | null;
  shootingStyle: 'split' | 'three-under' | 'unknown';
  ownDrawIn: number | null;
}

async function geometryOfLimbs(db: Db, bowId: string, limbSetId: string | null) {
  const all = await db.selectFrom('geometry').selectAll().where('bow_id', '=', bowId).execute();
  const geometry = latestGeometry(all, limbSetId);
  const stations = await db
    .selectFrom('geometry_station')
    .selectAll()
    .where('geometry_id', '=', geometry?.id ?? '')
    .execute();
  return { geometry, stations };
}

/** The newest standing weighing that tells a weight at the draw; without a draw, at its longest. */
function weighed(
  readings: readonly StoredReading[],
  limbSetId: string | null,
  draw: number | null,
) {
  const those = readings.filter(
    (one) =>
      one.struck_reason === null && one.limb_set_id === limbSetId && one.draw_reference === 'amo',
  );
  for (const reading of those.toReversed()) {
    const drawIn = draw ?? sessionWeights(reading.pulls, 'amo').at(-1)?.drawIn ?? 28;
    const weightLbf = weightAtAmoDraw(reading.pulls, reading.draw_reference, drawIn);
    if (weightLbf !== null) return { reading, weightLbf, drawIn };
  }
  return { reading: null, weightLbf: null, drawIn: draw ?? 28 };
}

/** Tiller as it was read last, at the bench, with a weighing or on arrival. */
async function tillerOf(db: Db, order: OrderRow | null, readings: readonly StoredReading[]) {
  const orderId = order?.id ?? '';
  const read = await db
    .selectFrom('tiller_reading')
    .select(['tiller_in', 'brace_in', 'read_at'])
    .where('order_id', '=', orderId)
    .where('struck_reason', 'is', null)
    .execute();
  const arrival = await db
    .selectFrom('arrival')
    .select(['tiller_in', 'brace_in'])
    .where('order_id', '=', orderId)
    .executeTakeFirst();
  const standing = readings.filter(({ struck_reason }) => struck_reason === null);
  const seen = [
    ...standing.map((one) => ({ at: one.weighed_at, tiller: one.tiller_in, brace: one.brace_in })),
    ...read.map((one) => ({ at: one.read_at, tiller: one.tiller_in, brace: one.brace_in })),
  ].toSorted((a, b) => a.at.localeCompare(b.at));
  const last = (pick: (one: (typeof seen)[number]) => number | null) =>
    seen.map(pick).findLast((value) => value !== null) ?? null;
  return {
    tillerIn: last(({ tiller }) => tiller) ?? arrival?.tiller_in ?? null,
    braceIn: last(({ brace }) => brace) ?? arrival?.brace_in ?? null,
  };
}

async function rest(db: Db, bow: BowRow, order: OrderRow | null, limbSetId: string | null) {
  const readings =
    order === null ? await storedReadingsOfBow(db, bow.id) : await storedReadings(db, [order.id]);
  const those = readings.filter((one) => one.bow_id === bow.id);
  const limbSet = await db
    .selectFrom('limb_set')
    .selectAll()
    .where('id', '=', limbSetId ?? '')
    .executeTakeFirst();
  const weight = weighed(those, limbSetId, order?.target_draw_in ?? null);
  const scale = await db
    .selectFrom('scale')
    .select('resolution_lbf')
    .where('id', '=', weight.reading?.scale_id ?? '')
    .executeTakeFirst();
  const owner = await db
    .selectFrom('customer')
    .select(['shooting_style', 'own_draw_in'])
    .where('id', '=', order?.customer_id ?? bow.customer_id ?? '')
    .executeTakeFirst();
  return {
    order,
    bow,
    limbSet: limbSet ?? null,
    ...(await geometryOfLimbs(db, bow.id, limbSetId)),
    ...weight,
    resolutionLbf: scale?.resolution_lbf ?? 0.1,
    ...(await tillerOf(db, order, those)),
    shootingStyle: owner?.shooting_style ?? ('unknown' as const),
    ownDrawIn: owner?.own_draw_in ?? null,
  };
}

async function bowRow(db: Db, id: string): Promise<BowRow> {
  const row = await db.selectFrom('bow').selectAll().where('id', '=', id).executeTakeFirst();
  if (row === undefined) throw notFound('bow', id);
  return row;
}

/** @throws ShopError NOT_FOUND where the bow is gone. */
export async function recordsOfOrder(
  db: Db,
  order: OrderRow & { bow_id: string },
): Promise<StartRecords> {
  return rest(db, await bowRow(db, order.bow_id), order, order.limb_set_id);
}

/** @throws ShopError NOT_FOUND for a bow that does not exist. */
export async function recordsOfBow(
  db: Db,
  bowId: string,
  limbSetId: string | null,
): Promise<StartRecords> {
  return rest(db, await bowRow(db, bowId), null, limbSetId);
}
