import { consumableFields, receivedFields } from './stocked-shop.ts';
import { newCommandId } from './test-shop.ts';
import type { UndoShop } from './undo-shop.ts';

type Act = (commandId: string) => Promise<unknown>;

const { unit: _unit, ...editable } = consumableFields;

const consumable = ({ client }: UndoShop) =>
  client.stores.addConsumable({ commandId: newCommandId(), ...consumableFields });

async function lot(kit: UndoShop): Promise<string> {
  const { id: consumableId } = await consumable(kit);
  const given = { commandId: newCommandId(), consumableId, ...receivedFields };
  const { lotIds } = await kit.client.stores.receive(given);
  return lotIds[0] ?? '';
}

/** What may be taken back in the stores; moves of the stock may not. */
export const undoCasesStores: Record<string, (kit: UndoShop) => Promise<Act>> = {
  'stores.addConsumable':
    async ({ client }) =>
    (commandId) =>
      client.stores.addConsumable({ commandId, ...consumableFields }),
  'stores.editConsumable': async (kit) => {
    const { id, rowVersion } = await consumable(kit);
    const changed = { ...editable, name: 'Clear finish, part A', weeklyUse: 40, active: true };
    return (commandId) =>
      kit.client.stores.editConsumable({ commandId, id, rowVersion, ...changed });
  },
  'stores.noteOrdered': async (kit) => {
    const { id, rowVersion } = await consumable(kit);
    return (commandId) =>
      kit.client.stores.noteOrdered({ commandId, id, rowVersion, onOrder: 946 });
  },
  'stores.editLot': async (kit) => {
    const id = await lot(kit);
    const { receivedOn, expiresOn, costCents } = receivedFields;
    const changed = { number: 'R-119', receivedOn, expiresOn, openedOn: null, costCents };
    return (commandId) =>
      kit.client.stores.editLot({ commandId, id, rowVersion: 1, ...changed, note: 'dented' });
  },
  'stores.openLot': async (kit) => {
    const id = await lot(kit);
    return (commandId) =>
      kit.client.stores.openLot({ commandId, id, rowVersion: 1, openedOn: '2026-03-02' });
  },
};
