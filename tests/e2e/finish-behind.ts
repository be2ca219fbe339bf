import type { Client } from '../support/doors.ts';
import { twoPartSheet } from '../support/finish-kit.ts';
import { newCommandId } from '../support/new-command-id.ts';
import { consumableFields, receivedFields } from '../support/stocked-shop.ts';
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

/** A two-part finish with its parts on the shelf, half a year before they expire; its id. */
export async function twoPartBehind(client: Client): Promise<string> {
  const onShelf = async (name: string, category: 'finish' | 'hardener' | 'thinner') => {
    const consumableId = await addedBehind(client, { name, category });
    const expiresOn = localDay(Date.now() + 180 * dayMs);
    const lot = { ...receivedFields, receivedOn: localDay(Date.now()), expiresOn };
    await client.stores.receive({ commandId: newCommandId(), consumableId, ...lot });
    return consumableId;
  };
  const { id } = await client.finish.addSystem({
    commandId: newCommandId(),
    sheet: twoPartSheet,
    resinId: await onShelf('Satin base', 'finish'),
    hardenerId: await onShelf('Satin hardener', 'hardener'),
    thinnerId: await onShelf('Slow thinner', 'thinner'),
    active: true,
  });
  return id;
}

/** So many cups just mixed, each with its clock. */
export async function cupsBehind(client: Client, cups: number): Promise<void> {
  const finishSystemId = await twoPartBehind(client);
  for (let cup = 0; cup < cups; cup += 1) {
    const mixed = await client.finish.mix({
      commandId: newCommandId(),
      finishSystemId,
      name: '',
      wanted: { by: 'volume', ml: 60 },
      mixF: 70,
      at: null,
      note: '',
    });
    if (mixed.outcome !== 'mixed') throw new Error(mixed.troubles.join(' '));
  }
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
