import type { OrderDetail } from '../../../shared/contract/orders.ts';
import type { FinishSheetFields } from '../../../shared/finish-sheet.ts';
import type { Client } from '../../support/doors.ts';
import { oilSheet } from '../../support/finish-kit.ts';
import { sessionOf } from '../../support/session-of.ts';
import { newCommandId } from '../../support/test-shop.ts';
import type { World } from './world.ts';

const command = () => ({ commandId: newCommandId() });
const reason = 'because it came to that';

/** Used as it comes, cured in some thousandths of a second and recoated at any time: no sequence waits for days. */
const quickSheet: FinishSheetFields = {
  ...oilSheet,
  name: 'Quick oil',
  recoat: [{ fromF: 60, toF: 90, spans: [{ fromH: 0, toH: null, scuff: false }] }],
  cure: { handle: 1e-6, stringAndFlex: 1e-6, wrap: 1e-6, full: 1e-6 },
};

export async function copiedSheet(client: Client): Promise<string> {
  const none = { resinId: null, hardenerId: null, thinnerId: null, active: true };
  const { id } = await client.finish.addSystem({ ...command(), sheet: quickSheet, ...none });
  return id;
}

export async function readAir(client: Client): Promise<void> {
  const air = { airF: 70, humidityPercent: 45, surfaceF: 70, note: '', at: null };
  await client.finish.recordAir({ ...command(), ...air });
}

export async function sand(client: Client, orderId: string): Promise<void> {
  await client.finish.recordSanding({
    ...command(),
    orderId,
    parts: [
      { section: 'upper-limb', substrate: 'glass' },
      { section: 'lower-limb', substrate: 'glass' },
    ],
    grit: { grit: 320, scale: 'P' },
    strokes: null,
    wiped: true,
    isLast: true,
    note: '',
    at: null,
  });
}

export async function chooseFinish(world: World, client: Client, orderId: string): Promise<void> {
  const { finishSystemId } = world;
  await client.finish.choose({ ...command(), orderId, finishSystemId, rowVersion: null });
}

/** One coat on one bow; what stands against it the owner may let pass, where anybody may. */
export async function coat(world: World, orderId: string): Promise<void> {
  await readAir(world.as('bench'));
  await world.as('owner').finish.spray({
    ...command(),
    ...sessionOf(world.finishSystemId, [orderId]),
    purpose: 'oil',
    note: '',
    used: null,
    override: { reason },
  });
}

/** A bow that went on without a coat is taken back for it. */
export async function coatAfterAll(
  world: World,
  client: Client,
  { card }: OrderDetail,
): Promise<void> {
  const { id, rowVersion, stage, route } = card;
  if (route.indexOf('finish') < route.indexOf(stage)) {
    await client.orders.move({ ...command(), id, rowVersion, to: 'finish', reason });
  }
  await coat(world, id);
}
