import type { Kysely } from 'kysely';
import { limbs } from '../../../shared/bows.ts';
import { decimal } from '../../../shared/measure.ts';
import { bowAreaIn2, type LimbToCoat, riserAllowance } from '../../finish/bow-area.ts';
import type { BowRow, OrderRow, Tables } from '../../storage/tables.ts';

/** What is coated of an order's bow. */
export interface OrderArea {
  orderId: string;
  number: string;
  /** Square inches; null where the limbs were not measured. */
  areaIn2: number | null;
  /** How it was reckoned, or what is missing. */
  sentence: string;
}

type Db = Kysely<Tables>;

/** The latest measurement of the order's own limbs that stands: of its limb set, or the bow's own. */
async function latestStations(db: Db, order: OrderRow) {
  const geometry = await db
    .selectFrom('geometry')
    .select('id')
    .where('bow_id', '=', order.bow_id ?? '')
    .where('struck_reason', 'is', null)
    .where((eb) =>
      order.limb_set_id === null
        ? eb('limb_set_id', 'is', null)
        : eb('limb_set_id', '=', order.limb_set_id),
    )
    .orderBy('version', 'desc')
    .executeTakeFirst();
  if (geometry === undefined) return [];
  return db
    .selectFrom('geometry_station')
    .selectAll()
    .where('geometry_id', '=', geometry.id)
    .execute();
}

function limbsOf(
  stations: Awaited<ReturnType<typeof latestStations>>,
  bow: BowRow,
  own: boolean,
): LimbToCoat[] {
  return limbs
    .map((limb) => ({
      lengthIn: own ? bow[`${limb}_limb_in`] : null,
      stations: stations
        .filter((row) => row.limb === limb)
        .map((row) => ({
          fromFadeIn: row.from_fade_in,
          widthIn: row.width_in,
          thicknessIn: row.thickness_in,
        })),
    }))
    .filter((limb) => limb.stations.length > 0);
}

function sentenceOf(areaIn2: number, limbCount: number, riserIn: number | null, only: boolean) {
  const measured = limbCount === 1 ? 'one limb as measured, the other alike' : 'limbs as measured';
  const length = decimal(riserIn ?? riserAllowance.lengthIn);
  const riser = only
    ? 'no riser'
    : `riser by allowance (${length} in long${riserIn === null ? ', not measured' : ''}, ${riserAllowance.girthIn} in round)`;
  return `${Math.round(areaIn2)} square inches: ${measured}, ${riser}.`;
}

/** Area of what an order coats, from the latest geometry of its bow. */
export async function areaOf(db: Db, order: OrderRow): Promise<OrderArea> {
  const named = { orderId: order.id, number: order.number };
  const bow = await db
    .selectFrom('bow')
    .selectAll()
    .where('id', '=', order.bow_id ?? '')
    .executeTakeFirst();
  if (bow === undefined) return { ...named, areaIn2: null, sentence: 'The bow is not identified.' };
  const own = order.limb_set_id === null;
  const measured = limbsOf(await latestStations(db, order), bow, own);
  if (measured.length === 0) {
    const sentence = 'The limbs are not measured: measure them, or type the area.';
    return { ...named, areaIn2: null, sentence };
  }
  const { upper_fade_in: upper, lower_fade_in: lower } = bow;
  const riserLengthIn = upper === null || lower === null ? null : upper + lower;
  const limbsOnly = order.came_as === 'limbs-only';
  const areaIn2 = bowAreaIn2({ limbs: measured, riserLengthIn, limbsOnly });
  return {
    ...named,
    areaIn2,
    sentence: sentenceOf(areaIn2, measured.length, riserLengthIn, limbsOnly),
  };
}
