import { ShopError } from '../../../shared/errors.ts';
import type { CommandTransaction } from '../../storage/commands.ts';
import { dayOf } from '../day.ts';

/**
 * Next order number of the year, `YY-NNNN`. The counter only grows, so a number is never reused.
 * @throws ShopError CONFLICT after 9,999 orders in one year.
 */
export async function nextOrderNumber(trx: CommandTransaction): Promise<string> {
  const year = Number(dayOf(trx.at).slice(0, 4));
  const row = await trx.db
    .insertInto('order_counter')
    .values({ year, last: 1 })
    .onConflict((conflict) =>
      conflict.column('year').doUpdateSet((eb) => ({ last: eb('order_counter.last', '+', 1) })),
    )
    .returning('last')
    .executeTakeFirstOrThrow();
  if (row.last > 9999) throw new ShopError('CONFLICT', `All order numbers of ${year} are used.`);
  return `${String(year % 100).padStart(2, '0')}-${String(row.last).padStart(4, '0')}`;
}
