import type { Kysely } from 'kysely';
import type { LotPick } from '../../../shared/contract/finish.ts';
import type { ContractInputs } from '../../../shared/contract/types.ts';
import { refuseField } from '../../../shared/errors.ts';
import type { FinishSheet } from '../../finish/sheet.ts';
import type { AirReadingRow, BatchRow, OrderRow, Tables } from '../../storage/tables.ts';
import { readOrder } from '../orders/order-row.ts';
import { notFound } from '../record.ts';
import { stockedLots } from '../stores/stocked-lot.ts';
import { latestAir, readAir } from './air.ts';
import { lotsOfBatches, readBatch } from './batches.ts';
import { type NamedSystem, readSystem, sheetOf } from './system-row.ts';

type Db = Kysely<Tables>;
export type SessionInput = ContractInputs['finish']['lookAtSession'];
export type SessionBow = SessionInput['bows'][number];

/** Everything a session names, read and found to belong together. */
export interface Session {
  input: SessionInput;
  system: NamedSystem;
  /** The batch's own sheet, else the system's. */
  sheet: FinishSheet;
  batch: BatchRow | null;
  /** Lots in the batch, or the one used straight from the can. */
  lots: readonly Pick<LotPick, 'part' | 'lotNumber' | 'expiresOn'>[];
  air: AirReadingRow | null;
  bows: { order: OrderRow; bow: SessionBow }[];
  /** Instant of the coats, ISO-8601 UTC. */
  at: string;
}

async function bowsOf(db: Db, input: SessionInput): Promise<Session['bows']> {
  const bows: Session['bows'] = [];
  for (const bow of input.bows) {
    bows.push({ order: await readOrder(db, bow.orderId), bow });
  }
  if (new Set(input.bows.map((bow) => bow.orderId)).size < bows.length) {
    refuseField('bows', 'A bow is chosen twice. Choose each once.');
  }
  return bows;
}

async function lotInHand(db: Db, system: NamedSystem, lotId: string): Promise<Session['lots']> {
  const [lot] = await stockedLots(db, { lotId });
  if (lot === undefined) throw notFound('lot', lotId);
  if (lot.row.consumable_id !== system.resin_id) {
    refuseField('lotId', `This lot is not of ${system.name}. Choose one of its own.`);
  }
  return [{ part: 'resin', lotNumber: lot.name, expiresOn: lot.expiresOn }];
}

async function batchAndLots(db: Db, input: SessionInput, system: NamedSystem) {
  if (input.batchId === null) {
    const lots = input.lotId === null ? [] : await lotInHand(db, system, input.lotId);
    return { batch: null, lots };
  }
  const batch = await readBatch(db, input.batchId);
  if (batch.finish_system_id !== system.id) {
    refuseField(
      'batchId',
      `Batch ${batch.name} is of another finish. Choose one of ${system.name}.`,
    );
  }
  return { batch, lots: (await lotsOfBatches(db, [batch.id])).get(batch.id) ?? [] };
}

function refuseOdd({ input, sheet, bows, at }: Session): void {
  if (input.purpose === 'oil' && sheet.kind !== 'hand-rubbed-oil') {
    refuseField('purpose', 'A coat of oil is of a hand-rubbed oil. Choose another purpose.');
  }
  const late = (since: string | null) => since !== null && Date.parse(since) > Date.parse(at);
  if (bows.some(({ bow }) => late(bow.hungSince))) {
    refuseField('hungSince', 'A bow cannot hang in the room from after its coat on.');
  }
}

/**
 * @param at instant of the coats, ISO-8601 UTC.
 * @throws ShopError NOT_FOUND for what does not exist, BAD_INPUT for what does not go together.
 */
export async function readSession(db: Db, input: SessionInput, at: string): Promise<Session> {
  const bows = await bowsOf(db, input);
  const system = await readSystem(db, input.finishSystemId);
  const { batch, lots } = await batchAndLots(db, input, system);
  const air =
    input.airReadingId === null ? await latestAir(db, at) : await readAir(db, input.airReadingId);
  if (air !== null && (air.struck_reason !== null || air.at > at)) {
    refuseField('airReadingId', 'This reading of the air does not count. Choose another.');
  }
  const sheet = sheetOf(batch ?? system);
  const session = { input, system, sheet, batch, lots, air, bows, at };
  refuseOdd(session);
  return session;
}
