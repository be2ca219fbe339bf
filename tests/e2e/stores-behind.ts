import type { Client } from '../support/doors.ts';
import { newCommandId } from '../support/new-command-id.ts';
import { consumableFields, receivedFields } from '../support/stocked-shop.ts';

const longWord = 'Unaussprechlichlangeslackhaerternameohnejedentrennstrich';
const day = 24 * 60 * 60 * 1000;
export const dayFromNow = (days: number) =>
  new Date(Date.now() + days * day).toISOString().slice(0, 10);

/**
 * Shelves with everything that marks them, written behind the screen: an expired lot, one that
 * soon is, a shortage, both grit scales, and a consumable with long data. Answers the latter.
 */
export async function stockedBehind(client: Client): Promise<string> {
  const add = (change: Partial<typeof consumableFields>) =>
    client.stores.addConsumable({ commandId: newCommandId(), ...consumableFields, ...change });
  const receive = (consumableId: string, change: Partial<typeof receivedFields>) =>
    client.stores.receive({
      commandId: newCommandId(),
      consumableId,
      ...receivedFields,
      receivedOn: dayFromNow(-20),
      ...change,
    });
  for (const [name, grit, scale] of [
    ['Wet sheets, first rub', 600, 'P'],
    ['Wet sheets, between coats', 400, 'CAMI'],
  ] as const) {
    const paper = { category: 'abrasive', unit: 'sheet', grit: { grit, scale } } as const;
    const { id } = await add({ name, ...paper, weeklyUse: 20, waitWeeks: 2 });
    await receive(id, { quantity: 25, unit: 'sheet', expiresOn: null, number: '' });
  }
  const { id } = await add({
    name: `${longWord} ${'and many words '.repeat(5)}`.slice(0, 120).trim(),
    category: 'hardener',
    shelf: longWord,
    weeklyUse: 100,
    waitWeeks: 3,
    openedDays: 30,
    hazards: ['isocyanate', 'flammable-solvent', 'self-heating-rags', 'sanding-dust'],
    note: `${longWord} ${'a long note '.repeat(60)}`,
  });
  const number = `LOT-${'0123456789'.repeat(7)}`;
  await receive(id, { number, expiresOn: dayFromNow(-3), note: 'dented '.repeat(60) });
  await receive(id, { number, expiresOn: dayFromNow(5), containers: 3, quantity: 1234.56 });
  await client.stores.issue({
    commandId: newCommandId(),
    consumableId: id,
    lotId: null,
    quantity: 12.5,
    unit: 'mL',
    orderId: null,
    reason: `${longWord} ${'for the sample board '.repeat(12)}`,
  });
  return id;
}
