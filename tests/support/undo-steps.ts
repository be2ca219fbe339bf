import { expect } from 'vitest';
import { bowFields, orderFields } from './fixtures.ts';
import { recordRows } from './table-rows.ts';
import { newCommandId } from './test-shop.ts';
import { undoCases } from './undo-cases.ts';
import type { UndoShop } from './undo-shop.ts';

export const undo = (kit: UndoShop, of: string, as = kit.client) =>
  as.undo.undo({ commandId: newCommandId(), of });

/** The refusal, with the proof that nothing was written by it. */
export async function refused(kit: UndoShop, of: string, as = kit.client) {
  const before = await recordRows(kit.shop);
  const error = await undo(kit, of, as).then(
    () => null,
    (thrown: { code: string; message: string }) => thrown,
  );
  expect(await recordRows(kit.shop)).toEqual(before);
  return { code: error?.code, message: error?.message ?? 'it was undone' };
}

export async function did(kit: UndoShop, name: string): Promise<string> {
  const act = await undoCases[name]?.(kit);
  const commandId = newCommandId();
  await act?.(commandId);
  return commandId;
}

export const orderAt = async (kit: UndoShop) => ({
  id: kit.orderId,
  rowVersion: await kit.version(),
});

export async function edit(kit: UndoShop, change: Partial<typeof orderFields>, as = kit.client) {
  const commandId = newCommandId();
  await as.orders.edit({ commandId, ...(await orderAt(kit)), ...orderFields, ...change });
  return commandId;
}

export async function moved(kit: UndoShop, to: 'in-mail' | 'arrived' | 'agreed' | 'requested') {
  const commandId = newCommandId();
  const result = await kit.client.orders.move({
    commandId,
    ...(await orderAt(kit)),
    to,
    reason: 'as it is',
    override: { reason: 'as it is' },
  });
  expect(result.outcome).toBe('moved');
  return commandId;
}

export async function editBow(kit: UndoShop, change: Partial<typeof bowFields>) {
  const { bow } = await kit.client.bows.get({ id: kit.bowId });
  const commandId = newCommandId();
  const { rowVersion } = bow;
  await kit.client.bows.edit({ commandId, id: kit.bowId, rowVersion, ...bowFields, ...change });
  return commandId;
}

export async function find(kit: UndoShop, grade: 'cosmetic' | 'watch' | 'stop', as = kit.client) {
  const commandId = newCommandId();
  const fields = { orderId: kit.orderId, grade, place: 'upper fade', note: 'a fine line' };
  return { commandId, ...(await as.findings.add({ commandId, ...fields })) };
}

export const latestLine = async (kit: UndoShop) => (await kit.flow.order()).history[0];
