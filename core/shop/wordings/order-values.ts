import { weightAtDraw } from '../../../shared/measure.ts';
import { dollarText } from '../../../shared/money.ts';
import { serviceLabels } from '../../../shared/stages.ts';
import type { OpenShop } from '../../storage/context.ts';
import type { OrderRow } from '../../storage/tables.ts';
import { bowLine } from '../bows/bow-line.ts';
import { servicesOf } from '../orders/order-json.ts';
import { priceOf } from '../prices/price-of.ts';
import { getShop } from '../setup/shop.ts';

async function names(shop: OpenShop, order: OrderRow) {
  const customer = await shop.read
    .selectFrom('customer')
    .select('name')
    .where('id', '=', order.customer_id ?? '')
    .executeTakeFirst();
  const bow = await shop.read
    .selectFrom('bow')
    .selectAll()
    .where('id', '=', order.bow_id ?? '')
    .executeTakeFirst();
  return {
    customer: customer?.name ?? 'the shop',
    bow: bow === undefined ? 'not identified yet' : bowLine(bow),
  };
}

/** Values of the fields that every text about an order may use. */
export async function orderValues(shop: OpenShop, order: OrderRow) {
  const { totalCents } = await priceOf(shop, order);
  return {
    shop: (await getShop(shop)).name,
    ...(await names(shop, order)),
    order: order.number,
    work: servicesOf(order)
      .map((service) => serviceLabels[service])
      .join(', '),
    target:
      order.target_weight_lbf === null || order.target_draw_in === null
        ? 'none'
        : weightAtDraw(order.target_weight_lbf, order.target_draw_in),
    total: totalCents === null ? 'not set yet' : dollarText(totalCents),
  };
}
