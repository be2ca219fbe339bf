import { refuseUnlessAboveZero } from '../finish/refuse.ts';

/** Hours in each unit of time; a day and a week by the clock, not by working hours. */
const hoursIn = { minute: 1 / 60, hour: 1, day: 24, week: 168 } as const;

export type TimeUnit = keyof typeof hoursIn;

/** Orders finished in a unit of time, on the mean. */
export interface Throughput {
  orders: number;
  per: TimeUnit;
}

export interface Span {
  time: number;
  unit: TimeUnit;
}

function perHour({ orders, per }: Throughput): number {
  refuseUnlessAboveZero('orders', orders, 'Orders finished');
  return orders / hoursIn[per];
}

/**
 * Orders in the shop at a time, on the mean: throughput x time in the shop. Units travel with the
 * numbers, so minutes never meet hours unchanged.
 *
 * Source: J. D. C. Little, "A proof for the queuing formula L = lambda W", Operations Research 9
 * (1961). It needs a steady shop: as many orders leave as arrive.
 * @throws ShopError BAD_INPUT where a value is not above 0.
 */
export function ordersInShop(throughput: Throughput, stay: Span): number {
  refuseUnlessAboveZero('time', stay.time, 'The time in the shop');
  return perHour(throughput) * stay.time * hoursIn[stay.unit];
}

/**
 * How long an order stays, on the mean, in the unit asked for: orders in the shop / throughput.
 * @throws ShopError BAD_INPUT where a value is not above 0.
 */
export function stayOf(orders: number, throughput: Throughput, unit: TimeUnit): number {
  refuseUnlessAboveZero('orders', orders, 'Orders in the shop');
  return orders / perHour(throughput) / hoursIn[unit];
}
