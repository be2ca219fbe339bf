import { stringTrackLabels } from '../../../shared/bench.ts';
import type { TillerReading } from '../../../shared/contract/bench-records.ts';
import type { ContractInputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import { inchFraction } from '../../../shared/measure.ts';
import { runCommand } from '../../storage/commands.ts';
import type { OpenShop, ShopContext } from '../../storage/context.ts';
import type { TillerReadingRow } from '../../storage/tables.ts';
import { openStops, stopsOf } from '../findings/open-stops.ts';
import { note } from '../orders/history.ts';
import { readOrder } from '../orders/order-row.ts';
import { changedOf } from '../record.ts';
import { bowOnBench } from './bow-on-bench.ts';
import { lastRemovalId } from './last-removal.ts';

/** `+1/8", upper limb: down the middle, lower limb: to the left`. */
export function tillerWords(
  row: Pick<TillerReadingRow, 'tiller_in' | 'upper_track' | 'lower_track'>,
): string {
  const sign = row.tiller_in < 0 ? '-' : '+';
  const amount =
    Math.abs(row.tiller_in) < 1 / 128 ? '0' : inchFraction(Math.abs(row.tiller_in), 64);
  const upper = stringTrackLabels[row.upper_track];
  const lower = stringTrackLabels[row.lower_track];
  return `${amount === '0' ? 'even' : `${sign}${amount}"`}, string over the upper limb ${upper}, over the lower ${lower}`;
}

export async function tillerReadingsOf(shop: OpenShop, orderId: string): Promise<TillerReading[]> {
  const rows = await shop.read
    .selectFrom('tiller_reading')
    .innerJoin('person', 'person.id', 'tiller_reading.person_id')
    .selectAll('tiller_reading')
    .select('person.name as person_name')
    .where('order_id', '=', orderId)
    .orderBy('read_at', 'desc')
    .orderBy('tiller_reading.id', 'desc')
    .limit(500)
    .execute();
  return rows.map((row) => ({
    id: row.id,
    rowVersion: row.row_version,
    tillerIn: row.tiller_in,
    upperTrack: row.upper_track,
    lowerTrack: row.lower_track,
    words: tillerWords(row),
    note: row.note,
    at: row.read_at,
    personName: row.person_name,
    struckReason: row.struck_reason,
  }));
}

/** @see contract.bench.readTiller */
export function readTiller(
  ctx: ShopContext,
  input: ContractInputs['bench']['readTiller'],
): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'bench.readTiller' }, async (trx) => {
    const order = await readOrder(trx.db, input.orderId);
    const bowId = bowOnBench(trx, order);
    const [stop] = stopsOf(await openStops(trx.db), order);
    if (stop !== undefined) {
      const sentence = `Do not string this bow: a stop finding is open (${stop.place}).`;
      throw new ShopError('CONFLICT', sentence, { findings: 'Repair and look again first.' });
    }
    const row = await trx.insert('tiller_reading', {
      id: ctx.newId(),
      order_id: order.id,
      bow_id: bowId,
      removal_id: await lastRemovalId(trx.db, order.id),
      tiller_in: input.tillerIn,
      upper_track: input.upperTrack,
      lower_track: input.lowerTrack,
      brace_in: input.braceIn,
      note: input.note,
      read_at: trx.at,
      person_id: ctx.actor.personId,
      struck_reason: null,
    });
    await note(trx, ctx, order.id, {
      kind: 'tiller',
      summary: `Tiller ${tillerWords(row)}`.slice(0, 1000),
    });
    return changedOf(row);
  });
}
