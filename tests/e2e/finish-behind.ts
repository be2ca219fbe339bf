import type { FinishSheetFields } from '../../shared/finish-sheet.ts';
import type { Client } from '../support/doors.ts';
import { newCommandId } from '../support/new-command-id.ts';
import { consumableFields, receivedFields } from '../support/stocked-shop.ts';
import { takeIn } from './open-shop.ts';
import { inFinishBehind, movedBehind } from './order-behind.ts';

const minuteMs = 60_000;
export const hourMs = 60 * minuteMs;
export const dayMs = 24 * hourMs;

/** An instant so long ago, as the records keep it. */
export const ago = (ms: number) => new Date(Date.now() - ms).toISOString();
/** The same as a date and time field takes it. */
export function agoTyped(ms: number): string {
  const at = new Date(Date.now() - ms);
  return new Date(at.getTime() - at.getTimezoneOffset() * minuteMs).toISOString().slice(0, 16);
}
const dayAway = (days: number) => new Date(Date.now() + days * dayMs).toISOString().slice(0, 10);

/** A two-part finish whose figures belong to nobody's product. */
export const hardClear: FinishSheetFields = {
  kind: 'two-part',
  name: 'Hard clear',
  revision: 'C',
  datedOn: '2026-03-01',
  air: { airF: { from: 60, to: 90 }, humidityPercent: { from: 20, to: 70 } },
  coats: { from: 2, to: 4 },
  recoat: [
    {
      fromF: 60,
      toF: 90,
      spans: [
        { fromH: 4, toH: 24, scuff: false },
        { fromH: 24, toH: null, scuff: true },
      ],
    },
  ],
  cure: { handle: 12, stringAndFlex: 72, wrap: 96, full: 168 },
  lastGrit: { glass: { grit: 320, scale: 'P' }, wood: null, overlay: null },
  scuffGrit: { grit: 400, scale: 'P' },
  hazards: ['isocyanate', 'flammable-solvent'],
  mix: {
    by: 'volume',
    resinParts: 4,
    hardenerParts: 1,
    thinnerPercent: 10,
    density: { resin: 1.02, hardener: 1.11, thinner: 0.87 },
  },
  film: { solidsPercent: 42, wetMil: { from: 2, to: 4 } },
  potLife: { minutes: 120, referenceF: 70, inductionMin: 15 },
};

const rubbedOil: FinishSheetFields = {
  kind: 'hand-rubbed-oil',
  name: 'Rubbed oil',
  revision: '2',
  datedOn: '2025-11-15',
  air: { airF: { from: 55, to: 95 }, humidityPercent: { from: 0, to: 80 } },
  coats: { from: 3, to: 6 },
  recoat: [{ fromF: 55, toF: 95, spans: [{ fromH: 12, toH: null, scuff: false }] }],
  cure: { handle: 24, stringAndFlex: 48, wrap: 336, full: 720 },
  lastGrit: { glass: null, wood: { grit: 220, scale: 'P' }, overlay: null },
  scuffGrit: null,
  hazards: ['self-heating-rags'],
};

type Stock = Partial<typeof consumableFields>;

/** One consumable with one lot in date. */
export async function stockedBehind(client: Client, stock: Stock, lot = 'L-1'): Promise<string> {
  const added = { commandId: newCommandId(), ...consumableFields, ...stock };
  const { id } = await client.stores.addConsumable(added);
  const { unit } = added;
  await client.stores.receive({
    commandId: newCommandId(),
    consumableId: id,
    ...receivedFields,
    number: lot,
    receivedOn: dayAway(-20),
    expiresOn: dayAway(200),
    unit,
    quantity: unit === 'sheet' ? 40 : 946,
  });
  return id;
}

/** The two-part finish with its parts on the shelf, and abrasives of both scales. */
export async function hardClearBehind(client: Client): Promise<string> {
  const resinId = await stockedBehind(client, { name: 'Hard clear, resin' }, 'R-118');
  const hardenerId = await stockedBehind(
    client,
    { name: 'Hard clear, hardener', category: 'hardener', hazards: ['isocyanate'] },
    'H-31',
  );
  const thinnerId = await stockedBehind(
    client,
    { name: 'Slow thinner', category: 'thinner', hazards: ['flammable-solvent'] },
    'T-4',
  );
  for (const [grit, scale] of [
    [240, 'P'],
    [320, 'P'],
    [320, 'CAMI'],
  ] as const) {
    const name = `Paper ${scale} ${grit}`;
    await stockedBehind(
      client,
      { name, category: 'abrasive', unit: 'sheet', grit: { grit, scale } },
      `${scale}${grit}`,
    );
  }
  const { id } = await client.finish.addSystem({
    commandId: newCommandId(),
    sheet: hardClear,
    resinId,
    hardenerId,
    thinnerId,
    active: true,
  });
  return id;
}

const refinish = {
  services: ['strip-refinish' as const],
  targetWeightLbf: null,
  targetDrawIn: null,
};

/** A stripped and sanded bow in the finish room. */
export async function bowInFinish(
  client: Client,
  customer: string,
): Promise<{ id: string; number: string }> {
  const order = await takeIn(client, { customer, order: refinish });
  await inFinishBehind(client, order.id, 50.6);
  return order;
}

export async function chosenBehind(
  client: Client,
  orderId: string,
  finishSystemId: string,
): Promise<void> {
  await client.finish.choose({
    commandId: newCommandId(),
    orderId,
    finishSystemId,
    rowVersion: null,
  });
}

export async function airBehind(client: Client, at: string | null): Promise<void> {
  await client.finish.recordAir({
    commandId: newCommandId(),
    airF: 70,
    humidityPercent: 45,
    surfaceF: 68,
    note: '',
    at,
  });
}

export async function mixedBehind(
  client: Client,
  finishSystemId: string,
  at: string | null,
): Promise<string> {
  const mixed = await client.finish.mix({
    commandId: newCommandId(),
    finishSystemId,
    name: '',
    wanted: { by: 'volume', ml: 60 },
    mixF: 70,
    at,
    note: '',
  });
  if (mixed.outcome === 'refused') throw new Error(mixed.troubles.join(' '));
  return mixed.id;
}

interface Coated {
  finishSystemId: string;
  batchId: string | null;
  orderIds: readonly string[];
  at: string | null;
  purpose?: 'clear' | 'oil';
}

export async function coatedBehind(client: Client, coated: Coated): Promise<void> {
  const { finishSystemId, batchId, orderIds, at, purpose = 'clear' } = coated;
  const done = await client.finish.spray({
    commandId: newCommandId(),
    finishSystemId,
    batchId,
    lotId: null,
    airReadingId: null,
    purpose,
    sections: [],
    coats: 1,
    wetMil: null,
    bows: orderIds.map((orderId) => ({
      orderId,
      scuffed: null,
      surfaceF: null,
      hungSince: null,
    })),
    at,
    note: '',
    used: null,
    override: { reason: 'seen by the owner' },
  });
  if (done.outcome === 'refused') {
    const all = [...done.session, ...done.orders.flatMap(({ missing }) => missing)];
    throw new Error(all.map(({ sentence }) => sentence).join(' '));
  }
}

export interface BusyRoom {
  systemId: string;
  coated: string;
  curing: string;
}

/** A room with a cup that runs, one that is past, bows in every state, and a long name. */
export async function busyRoomBehind(client: Client): Promise<BusyRoom> {
  const systemId = await hardClearBehind(client);
  const oil = await client.finish.addSystem({
    commandId: newCommandId(),
    sheet: rubbedOil,
    resinId: null,
    hardenerId: null,
    thinnerId: null,
    active: true,
  });
  const names = [
    'Nora Hale',
    'Odo Brand',
    'Maximiliane-Theodora van der Hoogenboom-Sørensen zu Unter-Oberhausen',
    'Alwin Reed',
  ];
  const bows: string[] = [];
  for (const name of names) bows.push((await bowInFinish(client, name)).id);
  const [coated = '', curing = '', long = ''] = bows;
  for (const id of [coated, curing]) await chosenBehind(client, id, systemId);
  await chosenBehind(client, long, oil.id);
  await client.finish.recordSanding({
    commandId: newCommandId(),
    orderId: coated,
    parts: [
      { section: 'upper-limb', substrate: 'glass' },
      { section: 'lower-limb', substrate: 'glass' },
    ],
    grit: { grit: 320, scale: 'CAMI' },
    strokes: 20,
    wiped: true,
    isLast: true,
    note: '',
    at: ago(5 * hourMs),
  });
  await airBehind(client, ago(4 * dayMs));
  const early = await mixedBehind(client, systemId, ago(4 * dayMs - hourMs));
  await coatedBehind(client, {
    finishSystemId: systemId,
    batchId: early,
    orderIds: [curing],
    at: ago(4 * dayMs - 2 * hourMs),
  });
  await movedBehind(client, curing, 'cure');
  await airBehind(client, ago(4 * hourMs));
  const past = await mixedBehind(client, systemId, ago(4 * hourMs));
  await coatedBehind(client, {
    finishSystemId: systemId,
    batchId: past,
    orderIds: [coated],
    at: ago(3 * hourMs),
  });
  await airBehind(client, null);
  await mixedBehind(client, systemId, ago(20 * minuteMs));
  return { systemId, coated, curing };
}
