import type { Kysely } from 'kysely';
import type { Batch, LotPick } from '../../../shared/contract/finish.ts';
import type { ContractInputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import type { MixPart } from '../../../shared/finish.ts';
import { lotName } from '../../../shared/stores.ts';
import { batchState } from '../../finish/pot-life.ts';
import { runCommand } from '../../storage/commands.ts';
import type { OpenShop, ShopContext } from '../../storage/context.ts';
import type { BatchRow, FinishSystemRow, Tables } from '../../storage/tables.ts';
import { changedOf, notFound } from '../record.ts';
import { lastDayOf } from '../stores/stocked-lot.ts';
import { cautionsOf, sheetOf } from './system-row.ts';

type Db = Kysely<Tables>;

/** @throws ShopError NOT_FOUND. */
export async function readBatch(db: Db, id: string): Promise<BatchRow> {
  const row = await db.selectFrom('batch').selectAll().where('id', '=', id).executeTakeFirst();
  if (row === undefined) throw notFound('batch', id);
  return row;
}

type PartIds = Pick<FinishSystemRow, 'resin_id' | 'hardener_id' | 'thinner_id'>;

function partOf(system: PartIds, consumableId: string): MixPart {
  if (consumableId === system.hardener_id) return 'hardener';
  return consumableId === system.thinner_id ? 'thinner' : 'resin';
}

/** Lots that went into batches, by batch. */
export async function lotsOfBatches(
  db: Db,
  batchIds: readonly string[],
): Promise<Map<string, LotPick[]>> {
  if (batchIds.length === 0) return new Map();
  const rows = await db
    .selectFrom('stock_move')
    .innerJoin('lot', 'lot.id', 'stock_move.lot_id')
    .innerJoin('consumable', 'consumable.id', 'stock_move.consumable_id')
    .innerJoin('batch', 'batch.id', 'stock_move.batch_id')
    .innerJoin('finish_system', 'finish_system.id', 'batch.finish_system_id')
    .select(['stock_move.batch_id', 'stock_move.quantity', 'stock_move.consumable_id'])
    .select(['lot.id as lot_id', 'lot.number', 'lot.received_on', 'lot.expires_on'])
    .select(['lot.opened_on', 'consumable.opened_days', 'consumable.unit'])
    .select(['finish_system.resin_id', 'finish_system.hardener_id', 'finish_system.thinner_id'])
    .where('stock_move.batch_id', 'in', batchIds)
    .where('stock_move.kind', '=', 'issued')
    .orderBy('stock_move.at')
    .orderBy('stock_move.id')
    .execute();
  const picks = rows.map((row) => ({
    batchId: row.batch_id ?? '',
    pick: {
      part: partOf(row, row.consumable_id),
      consumableId: row.consumable_id,
      lotId: row.lot_id,
      lotNumber: lotName({ number: row.number, receivedOn: row.received_on }),
      expiresOn: lastDayOf(row, row.opened_days),
      quantity: -row.quantity,
      unit: row.unit,
    },
  }));
  return new Map(
    [...Map.groupBy(picks, (each) => each.batchId)].map(([id, own]) => [
      id,
      own.map((each) => each.pick),
    ]),
  );
}

type NamedBatch = BatchRow & { person_name: string; system_name: string };

export function batchOf(row: NamedBatch, lots: LotPick[], now: string): Batch {
  const times = { usableFrom: row.usable_from, usableUntil: row.usable_until };
  return {
    id: row.id,
    rowVersion: row.row_version,
    name: row.name,
    finishSystemId: row.finish_system_id,
    systemName: row.system_name,
    mixedAt: row.mixed_at,
    mixF: row.mix_f,
    resinG: row.resin_g,
    hardenerG: row.hardener_g,
    thinnerG: row.thinner_g,
    resinMl: row.resin_ml,
    hardenerMl: row.hardener_ml,
    thinnerMl: row.thinner_ml,
    ...times,
    discardedAt: row.discarded_at,
    discardedWhy: row.discarded_why,
    note: row.note,
    personName: row.person_name,
    state: row.discarded_at === null ? batchState(times, now) : 'discarded',
    lots,
    cautions: cautionsOf(sheetOf(row)),
  };
}

export function namedBatches(db: Db) {
  return db
    .selectFrom('batch')
    .innerJoin('person', 'person.id', 'batch.person_id')
    .innerJoin('finish_system', 'finish_system.id', 'batch.finish_system_id')
    .selectAll('batch')
    .select(['person.name as person_name', 'finish_system.name as system_name'])
    .orderBy('batch.mixed_at', 'desc')
    .orderBy('batch.id', 'desc');
}

export async function batchesFrom(
  db: Db,
  rows: readonly NamedBatch[],
  now: string,
): Promise<Batch[]> {
  const lots = await lotsOfBatches(
    db,
    rows.map((row) => row.id),
  );
  return rows.map((row) => batchOf(row, lots.get(row.id) ?? [], now));
}

/** @see contract.finish.batches */
export async function listBatches(shop: OpenShop): Promise<Batch[]> {
  const rows = await namedBatches(shop.read).limit(200).execute();
  return batchesFrom(shop.read, rows, shop.now());
}

/** @see contract.finish.discardBatch */
export function discardBatch(
  ctx: ShopContext,
  input: ContractInputs['finish']['discardBatch'],
): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'finish.discardBatch' }, async (trx) => {
    const found = await readBatch(trx.db, input.id);
    if (found.discarded_at !== null) {
      throw new ShopError('CONFLICT', `Batch ${found.name} is already discarded.`);
    }
    return changedOf(
      await trx.update('batch', found.id, input.rowVersion, {
        discarded_at: trx.at,
        discarded_why: input.reason,
      }),
    );
  });
}
