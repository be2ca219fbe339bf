import { ShopError } from '../../../shared/errors.ts';
import type { CommandTransaction } from '../../storage/commands.ts';
import type { OrderRow } from '../../storage/tables.ts';

/**
 * The bow that the order is about, named as the command's subject.
 * @throws ShopError CONFLICT where nobody has said yet which bow it is
 */
export function bowOnBench(trx: CommandTransaction, order: OrderRow): string {
  if (order.bow_id === null) {
    throw new ShopError('CONFLICT', 'Say first which bow this order is about.', {
      bow: 'Identify the bow on the order.',
    });
  }
  trx.about({ orderId: order.id, bowId: order.bow_id });
  return order.bow_id;
}
