import type { Client } from '../support/doors.ts';
import { newCommandId } from '../support/new-command-id.ts';
import { consumableFields } from '../support/stocked-shop.ts';
import { takeIn } from './open-shop.ts';
import { inFinishBehind } from './order-behind.ts';

export const minuteMs = 60_000;
export const hourMs = 60 * minuteMs;
export const dayMs = 24 * hourMs;

/** Local day of an instant, as the shop's papers write it. */
export function localDay(ms: number): string {
  return localTime(ms).slice(0, 10);
}

/** Local time of an instant, as a date and time field takes it. */
export function localTime(ms: number): string {
  return new Date(ms - new Date(ms).getTimezoneOffset() * minuteMs).toISOString().slice(0, 16);
}

/** Something the stores know of and have none of. */
export async function addedBehind(
  client: Client,
  stock: Partial<typeof consumableFields>,
): Promise<string> {
  const added = { commandId: newCommandId(), ...consumableFields, ...stock };
  return (await client.stores.addConsumable(added)).id;
}

/** A stripped and sanded bow in the finish room. */
export async function bowInFinish(
  client: Client,
  customer: string,
): Promise<{ id: string; number: string }> {
  const order = await takeIn(client, {
    customer,
    order: { services: ['strip-refinish'], targetWeightLbf: null, targetDrawIn: null },
  });
  await inFinishBehind(client, order.id, 50.6);
  return order;
}
