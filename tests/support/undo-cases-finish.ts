import { oilSheet, twoPartSheet } from './finish-kit.ts';
import { sessionOf } from './session-of.ts';
import { consumableFields, receivedFields } from './stocked-shop.ts';
import { newCommandId } from './test-shop.ts';
import type { UndoShop } from './undo-shop.ts';

type Act = (commandId: string) => Promise<unknown>;

const none = { resinId: null, hardenerId: null, thinnerId: null, active: true };
const air = { airF: 70, humidityPercent: 50, surfaceF: 70, note: '', at: null };
const reason = 'of another bow';

const oil = ({ client }: UndoShop) =>
  client.finish.addSystem({ commandId: newCommandId(), sheet: oilSheet, ...none });

async function stocked({ client }: UndoShop, name: string): Promise<string> {
  const fields = { ...consumableFields, name };
  const { id } = await client.stores.addConsumable({ commandId: newCommandId(), ...fields });
  await client.stores.receive({ commandId: newCommandId(), consumableId: id, ...receivedFields });
  return id;
}

async function batch(kit: UndoShop): Promise<string> {
  const { id: finishSystemId } = await kit.client.finish.addSystem({
    commandId: newCommandId(),
    sheet: twoPartSheet,
    resinId: await stocked(kit, 'Base'),
    hardenerId: await stocked(kit, 'Hardener'),
    thinnerId: null,
    active: true,
  });
  const mixed = await kit.client.finish.mix({
    commandId: newCommandId(),
    finishSystemId,
    name: '',
    wanted: { by: 'volume', ml: 100 },
    mixF: 70,
    at: null,
    note: '',
  });
  if (mixed.outcome !== 'mixed') throw new Error(mixed.troubles.join(' '));
  return mixed.id;
}

async function oiled(kit: UndoShop): Promise<string> {
  const { client, orderId } = kit;
  const { id: finishSystemId } = await oil(kit);
  await client.finish.choose({
    commandId: newCommandId(),
    orderId,
    finishSystemId,
    rowVersion: null,
  });
  await client.finish.recordAir({ commandId: newCommandId(), ...air });
  await kit.place('finish');
  const done = await client.finish.spray({
    commandId: newCommandId(),
    ...sessionOf(finishSystemId, [orderId]),
    purpose: 'seal',
    note: '',
    used: null,
  });
  if (done.outcome !== 'recorded') throw new Error(JSON.stringify(done));
  return done.coatIds[0] ?? '';
}

const sanded = (kit: UndoShop, commandId: string) =>
  kit.client.finish.recordSanding({
    commandId,
    orderId: kit.orderId,
    parts: [
      { section: 'upper-limb', substrate: 'glass' },
      { section: 'riser', substrate: 'wood' },
    ],
    grit: { grit: 220, scale: 'P' },
    strokes: 20,
    wiped: true,
    isLast: true,
    note: '',
    at: null,
  });

/** What may be taken back in the finish room; batches and coats may not. */
export const undoCasesFinish: Record<string, (kit: UndoShop) => Promise<Act>> = {
  'finish.addSystem':
    async ({ client }) =>
    (commandId) =>
      client.finish.addSystem({ commandId, sheet: oilSheet, ...none }),
  'finish.editSystem': async (kit) => {
    const { id, rowVersion } = await oil(kit);
    const sheet = { ...oilSheet, revision: '5' };
    return (commandId) =>
      kit.client.finish.editSystem({ commandId, id, rowVersion, sheet, ...none, active: false });
  },
  'finish.choose': async (kit) => {
    const { id: finishSystemId } = await oil(kit);
    const { orderId } = kit;
    return (commandId) =>
      kit.client.finish.choose({ commandId, orderId, finishSystemId, rowVersion: null });
  },
  'finish.recordAir':
    async ({ client }) =>
    (commandId) =>
      client.finish.recordAir({ commandId, ...air }),
  'finish.strikeOutAir': async ({ client }) => {
    const { id, rowVersion } = await client.finish.recordAir({
      commandId: newCommandId(),
      ...air,
    });
    return (commandId) => client.finish.strikeOutAir({ commandId, id, rowVersion, reason });
  },
  'finish.discardBatch': async (kit) => {
    const id = await batch(kit);
    return (commandId) => kit.client.finish.discardBatch({ commandId, id, rowVersion: 1, reason });
  },
  'finish.strikeOutCoat': async (kit) => {
    const id = await oiled(kit);
    return (commandId) => kit.client.finish.strikeOutCoat({ commandId, id, rowVersion: 1, reason });
  },
  'finish.readSurface':
    async ({ client, orderId }) =>
    (commandId) =>
      client.finish.readSurface({ commandId, orderIds: [orderId], surfaceF: 70, at: null }),
  'finish.recordSanding': async (kit) => (commandId) => sanded(kit, commandId),
  'finish.strikeOutSanding': async (kit) => {
    const { recorded } = await sanded(kit, newCommandId());
    const id = recorded[0]?.id ?? '';
    return (commandId) =>
      kit.client.finish.strikeOutSanding({ commandId, id, rowVersion: 1, reason });
  },
};
