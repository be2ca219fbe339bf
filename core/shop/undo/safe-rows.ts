import { arrivalMissing } from '../../../shared/arrival.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { CommandTransaction, RecordTable } from '../../storage/commands.ts';
import type { BowRow } from '../../storage/tables.ts';
import { arrivalFieldsOf, arrivalRowOf } from '../arrival/arrival-row.ts';
import { countBelongings } from '../arrival/belongings.ts';
import { refuseLimbSets, refusePlannedPast } from '../bows/bows.ts';
import { openStops, stopsOf } from '../findings/open-stops.ts';
import { readOrder } from '../orders/order-row.ts';
import { changes, type RowWrite } from './done.ts';

type Check = (trx: CommandTransaction, write: RowWrite) => Promise<void>;

/** The order a row belongs to, whether the command added it or changed it. */
const orderIdOf = ({ before, after }: RowWrite) => String(before?.order_id ?? after?.order_id);

/** A safe draw that was put back must not leave an order planning past it, nor limbs on a one-piece bow. */
async function refuseUnsafeBow(trx: CommandTransaction, write: RowWrite): Promise<void> {
  const bow = write.before as unknown as BowRow;
  if (changes(write, 'max_safe_draw_in')) {
    await refusePlannedPast(trx, write.id, bow.max_safe_draw_in);
  }
  if (changes(write, 'take_down') && bow.take_down === 'one-piece') {
    await refuseLimbSets(trx, write.id);
  }
}

/** A weighing that counts again must lie inside what the bow can take as it is known now. */
async function refuseUnsafeReading(trx: CommandTransaction, write: RowWrite): Promise<void> {
  if (!changes(write, 'struck_reason') || write.before?.struck_reason !== null) return;
  const past = await trx.db
    .selectFrom('reading_pull')
    .innerJoin('reading', 'reading.id', 'reading_pull.reading_id')
    .innerJoin('bow', 'bow.id', 'reading.bow_id')
    .select(['reading_pull.draw_in', 'bow.max_safe_draw_in'])
    .where('reading.id', '=', write.id)
    .whereRef('reading_pull.draw_in', '>', 'bow.max_safe_draw_in')
    .executeTakeFirst();
  if (past === undefined) return;
  throw new ShopError(
    'CONFLICT',
    `A pull of ${past.draw_in}" is past the bow's maximum safe draw of ${past.max_safe_draw_in}".`,
    { reading: write.id },
  );
}

async function refuseTwoHolds(trx: CommandTransaction, write: RowWrite): Promise<void> {
  const open = await trx.db
    .selectFrom('hold')
    .select('id')
    .where('order_id', '=', orderIdOf(write))
    .where('released_at', 'is', null)
    .execute();
  if (open.length < 2) return;
  throw new ShopError(
    'CONFLICT',
    'The order is on hold again by now, and has one hold at a time.',
    {
      hold: 'Release the present hold first.',
    },
  );
}

async function refuseTwoParcels(trx: CommandTransaction, write: RowWrite): Promise<void> {
  const live = await trx.db
    .selectFrom('shipment')
    .select('id')
    .where('order_id', '=', orderIdOf(write))
    .where('direction', '=', 'out')
    .where('struck_reason', 'is', null)
    .execute();
  if (live.length < 2) return;
  throw new ShopError('CONFLICT', 'Another parcel goes out with this order by now.', {
    shipment: 'Strike out one of the two.',
  });
}

async function refuseStringing(trx: CommandTransaction, write: RowWrite): Promise<void> {
  if (!changes(write, 'strung') || write.before?.strung !== 'strung') return;
  const order = await readOrder(trx.db, orderIdOf(write));
  const [stop] = stopsOf(await openStops(trx.db), order);
  if (stop === undefined) return;
  throw new ShopError('CONFLICT', `Do not string it: a stop finding is open (${stop.place}).`, {
    strung: 'Say why it is not strung.',
  });
}

/** A list and "nothing came along" cannot both stand, and a complete check needs all it rests on. */
async function refuseOddArrival(trx: CommandTransaction, write: RowWrite): Promise<void> {
  const arrival = await arrivalRowOf(trx.db, orderIdOf(write));
  if (arrival === undefined) return;
  const listed = await countBelongings(trx.db, arrival.order_id);
  if (arrival.nothing_came_along === 1 && listed > 0) {
    throw new ShopError('CONFLICT', 'Something is on the list of what came along by now.', {
      nothingCameAlong: 'Correct the list instead.',
    });
  }
  const [missing] = arrivalMissing(arrivalFieldsOf(arrival), listed);
  if (arrival.completed_at === null || missing === undefined) return;
  throw new ShopError('CONFLICT', `The arrival check is complete and rests on this: ${missing}`, {
    arrival: arrival.id,
  });
}

/** Coats rest on the finish that was chosen for them. */
async function refuseCoatedChoice(trx: CommandTransaction, write: RowWrite): Promise<void> {
  const coat = await trx.db
    .selectFrom('coat')
    .select('id')
    .where('order_id', '=', orderIdOf(write))
    .where('struck_reason', 'is', null)
    .where('purpose', '!=', 'seal')
    .executeTakeFirst();
  if (coat === undefined) return;
  throw new ShopError('CONFLICT', 'The bow has been coated with this finish by now.', {
    coat: 'Strike the coats out first, if they are not on it.',
  });
}

/** Two of one name could not be told apart. */
function refuseSameName(table: 'limb_set' | 'carrier' | 'finish_system', noun: string): Check {
  return async (trx, write) => {
    if (!changes(write, 'name')) return;
    const name = String(write.before?.name);
    const others = await trx.db
      .selectFrom(table)
      .select(['id', 'name'])
      .where('id', '!=', write.id)
      .$if(table === 'limb_set', (query) =>
        query.where('bow_id' as 'id', '=', String(write.before?.bow_id)),
      )
      .execute();
    if (others.every((other) => other.name.toLowerCase() !== name.toLowerCase())) return;
    throw new ShopError('CONFLICT', `There is another ${noun} named "${name}" by now.`, {
      name: 'Give the other one another name first.',
    });
  };
}

const checks: Partial<Record<RecordTable, readonly Check[]>> = {
  bow: [refuseUnsafeBow],
  reading: [refuseUnsafeReading],
  hold: [refuseTwoHolds],
  shipment: [refuseTwoParcels],
  arrival: [refuseStringing, refuseOddArrival],
  belonging: [refuseOddArrival],
  limb_set: [refuseSameName('limb_set', 'limb set')],
  carrier: [refuseSameName('carrier', 'carrier')],
  order_finish: [refuseCoatedChoice],
  finish_system: [refuseSameName('finish_system', 'finish')],
};

/** Refuses what the commands themselves would refuse, now that the row is as it was before. */
export async function refuseUnsafeRow(trx: CommandTransaction, write: RowWrite): Promise<void> {
  for (const check of checks[write.table] ?? []) await check(trx, write);
}
