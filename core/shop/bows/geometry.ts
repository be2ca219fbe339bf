import type { Limb } from '../../../shared/bows.ts';
import type { GeometryVersion, Station } from '../../../shared/contract/geometry.ts';
import type { ContractInputs, ContractOutputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import { type CommandTransaction, runCommand } from '../../storage/commands.ts';
import type { OpenShop, ShopContext } from '../../storage/context.ts';
import type { GeometryStationRow } from '../../storage/tables.ts';
import { note, noteOnOpenOrders } from '../orders/history.ts';
import { readOrder } from '../orders/order-row.ts';
import { changedOf, notFound } from '../record.ts';
import { limbSetOfBow } from './limb-sets.ts';
import { stationChange } from './station-changes.ts';
import { checkStations } from './station-checks.ts';

type RecordInput = ContractInputs['geometry']['record'];

function stationOf(row: GeometryStationRow): Station {
  return {
    limb: row.limb,
    fromFadeIn: row.from_fade_in,
    widthIn: row.width_in,
    thicknessIn: row.thickness_in,
    surface: row.surface,
  };
}

async function storedVersions(shop: OpenShop, bowId: string) {
  const rows = await shop.read
    .selectFrom('geometry')
    .innerJoin('person', 'person.id', 'geometry.person_id')
    .leftJoin('limb_set', 'limb_set.id', 'geometry.limb_set_id')
    .leftJoin('shop_order', 'shop_order.id', 'geometry.order_id')
    .selectAll('geometry')
    .select(['person.name as person_name', 'limb_set.name as set_name'])
    .select('shop_order.number as order_number')
    .where('geometry.bow_id', '=', bowId)
    .orderBy('version', 'desc')
    .limit(500)
    .execute();
  const stations = await shop.read
    .selectFrom('geometry_station')
    .innerJoin('geometry', 'geometry.id', 'geometry_station.geometry_id')
    .selectAll('geometry_station')
    .where('geometry.bow_id', '=', bowId)
    .orderBy('geometry_station.limb', 'desc')
    .orderBy('geometry_station.from_fade_in')
    .execute();
  const byVersion = Map.groupBy(stations, (station) => station.geometry_id);
  return rows.map((row) => ({ row, stations: (byVersion.get(row.id) ?? []).map(stationOf) }));
}

/**
 * Geometry versions of a bow, newest first. Each is compared with the last one before it that
 * measured the same limbs and still stands.
 */
export async function geometryOf(shop: OpenShop, bowId: string): Promise<GeometryVersion[]> {
  const versions = await storedVersions(shop, bowId);
  return versions.map(({ row, stations }, index) => {
    const before = versions
      .slice(index + 1)
      .find(
        (older) => older.row.struck_reason === null && older.row.limb_set_id === row.limb_set_id,
      );
    return {
      id: row.id,
      rowVersion: row.row_version,
      bowId,
      limbSetId: row.limb_set_id,
      limbSetName: row.set_name,
      orderId: row.order_id,
      orderNumber: row.order_number,
      version: row.version,
      measuredAt: row.measured_at,
      personName: row.person_name,
      note: row.note,
      struckReason: row.struck_reason,
      comparedWith: before?.row.version ?? null,
      stations: stations.map((station) => ({
        ...station,
        ...stationChange(station, before?.stations ?? []),
      })),
    };
  });
}

/** @see contract.geometry.list */
export async function listGeometry(shop: OpenShop, bowId: string): Promise<GeometryVersion[]> {
  const bow = await shop.read
    .selectFrom('bow')
    .select('id')
    .where('id', '=', bowId)
    .executeTakeFirst();
  if (bow === undefined) throw notFound('bow', bowId);
  return geometryOf(shop, bowId);
}

/** Limb lengths as noted with the bow. They are the bow's own limbs', not those of a limb set. */
async function limbLengths(
  trx: CommandTransaction,
  input: RecordInput,
): Promise<Record<Limb, number | null>> {
  const bow = await trx.db
    .selectFrom('bow')
    .select(['upper_limb_in', 'lower_limb_in'])
    .where('id', '=', input.bowId)
    .executeTakeFirst();
  if (bow === undefined) throw notFound('bow', input.bowId);
  if (input.limbSetId === null) return { upper: bow.upper_limb_in, lower: bow.lower_limb_in };
  await limbSetOfBow(trx.db, input.limbSetId, input.bowId);
  return { upper: null, lower: null };
}

async function refuseOtherOrder(trx: CommandTransaction, input: RecordInput): Promise<void> {
  if (input.orderId === null) return;
  const order = await readOrder(trx.db, input.orderId);
  if (order.bow_id === input.bowId) return;
  throw new ShopError('CONFLICT', `Order ${order.number} is about another bow.`, {
    orderId: 'Identify the bow on the order first.',
  });
}

async function nextVersion(trx: CommandTransaction, bowId: string): Promise<number> {
  const { last } = await trx.db
    .selectFrom('geometry')
    .select((eb) => eb.fn.max('version').as('last'))
    .where('bow_id', '=', bowId)
    .executeTakeFirstOrThrow();
  return Number(last ?? 0) + 1;
}

/** @see contract.geometry.record */
export function recordGeometry(
  ctx: ShopContext,
  input: RecordInput,
): Promise<ContractOutputs['geometry']['record']> {
  return runCommand(ctx, { id: input.commandId, name: 'geometry.record' }, async (trx) => {
    trx.about({ bowId: input.bowId, orderId: input.orderId });
    const lengths = await limbLengths(trx, input);
    await refuseOtherOrder(trx, input);
    checkStations(input.stations, lengths);
    const version = await nextVersion(trx, input.bowId);
    const row = await trx.insert('geometry', {
      id: ctx.newId(),
      bow_id: input.bowId,
      limb_set_id: input.limbSetId,
      order_id: input.orderId,
      version,
      measured_at: trx.at,
      person_id: ctx.actor.personId,
      note: input.note,
      struck_reason: null,
    });
    for (const station of input.stations) {
      await trx.insert('geometry_station', {
        id: ctx.newId(),
        geometry_id: row.id,
        limb: station.limb,
        from_fade_in: station.fromFadeIn,
        width_in: station.widthIn,
        thickness_in: station.thicknessIn,
        surface: station.surface,
      });
    }
    const line = {
      kind: 'geometry',
      summary: `Limbs measured (version ${version}, ${input.stations.length} stations)`,
    };
    if (input.orderId === null) await noteOnOpenOrders(trx, ctx, { bowId: input.bowId }, line);
    else await note(trx, ctx, input.orderId, line);
    return { ...changedOf(row), version };
  });
}

/** @see contract.geometry.strikeOut */
export function strikeOutGeometry(
  ctx: ShopContext,
  input: ContractInputs['geometry']['strikeOut'],
): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'geometry.strikeOut' }, async (trx) => {
    const found = await trx.db
      .selectFrom('geometry')
      .selectAll()
      .where('id', '=', input.id)
      .executeTakeFirst();
    if (found === undefined) throw notFound('geometry', input.id);
    trx.about({ bowId: found.bow_id, orderId: found.order_id });
    if (found.struck_reason !== null) {
      throw new ShopError('CONFLICT', 'This measurement is already struck out.');
    }
    const row = await trx.update('geometry', found.id, input.rowVersion, {
      struck_reason: input.reason,
    });
    const line = {
      kind: 'strike-out',
      summary: `Limb measurements struck out (version ${found.version})`,
      reason: input.reason,
    };
    if (found.order_id === null) await noteOnOpenOrders(trx, ctx, { bowId: found.bow_id }, line);
    else await note(trx, ctx, found.order_id, line);
    return changedOf(row);
  });
}
