import { recordAir } from '../../core/shop/finish/air.ts';
import { chooseFinish } from '../../core/shop/finish/choose.ts';
import { mixBatch } from '../../core/shop/finish/mix.ts';
import { spray } from '../../core/shop/finish/spray.ts';
import { addFinishSystem } from '../../core/shop/finish/systems.ts';
import type { ContractInputs } from '../../shared/contract/types.ts';
import type { FinishSheetFields } from '../../shared/finish-sheet.ts';
import { sessionOf } from './session-of.ts';
import { received, stocked } from './stocked-shop.ts';
import { newCommandId, type TestShop, takeIn, testShop } from './test-shop.ts';
import { Flow } from './whole-flow.ts';

const ofAnyKind = {
  revision: '4',
  datedOn: '2026-01-15',
  air: { airF: { from: 60, to: 90 }, humidityPercent: { from: 20, to: 80 } },
  coats: { from: 2, to: 3 },
  recoat: [
    {
      fromF: 60,
      toF: 90,
      spans: [
        { fromH: 4, toH: 24, scuff: false },
        { fromH: 24, toH: 96, scuff: true },
      ],
    },
  ],
  cure: { handle: 8, stringAndFlex: 48, wrap: 96, full: 336 },
  lastGrit: { glass: { grit: 320, scale: 'P' as const }, wood: null, overlay: null },
  scuffGrit: null,
  hazards: ['isocyanate' as const, 'flammable-solvent' as const],
};

/** An invented sheet, with figures that are easy to reckon with. */
export const twoPartSheet = {
  kind: 'two-part',
  name: 'Satin top coat',
  ...ofAnyKind,
  mix: {
    by: 'volume',
    resinParts: 2,
    hardenerParts: 1,
    thinnerPercent: 10,
    density: { resin: 1.2, hardener: 1, thinner: 0.8 },
  },
  film: { solidsPercent: 44, wetMil: { from: 3, to: 5 } },
  potLife: { minutes: 120, referenceF: 70, inductionMin: 15 },
} as const satisfies FinishSheetFields;

export const oilSheet = {
  kind: 'hand-rubbed-oil',
  name: 'Rubbing oil',
  ...ofAnyKind,
  hazards: ['self-heating-rags'],
} satisfies FinishSheetFields;

export interface FinishKit {
  shop: TestShop;
  systemId: string;
  resinId: string;
  hardenerId: string;
  thinnerId: string;
  /** A shop's own bow that stands in Finish with its finish chosen. */
  bow(): Promise<Flow>;
  air(more?: Partial<Air>): ReturnType<typeof recordAir>;
  mix(more?: Partial<Mix>): ReturnType<typeof mixBatch>;
  spray(bows: readonly Flow[], more: Partial<Spray>): ReturnType<typeof spray>;
}

type Air = ContractInputs['finish']['recordAir'];
type Mix = ContractInputs['finish']['mix'];
type Spray = ContractInputs['finish']['spray'];

/** The first morning of the tests; the clock of a test shop begins then. */
export const firstDay = '2026-03-02';

export async function stock(
  shop: TestShop,
  name: string,
  category: 'finish' | 'hardener' | 'thinner',
  lots: readonly { number: string; expiresOn: string | null; quantity: number }[],
): Promise<string> {
  const { id } = await stocked(shop.owner, { name, category });
  for (const lot of lots) await received(shop.owner, id, { receivedOn: firstDay, ...lot });
  return id;
}

export function choose(shop: TestShop, orderId: string, finishSystemId: string) {
  const rowVersion = null;
  return chooseFinish(shop.owner, {
    commandId: newCommandId(),
    orderId,
    finishSystemId,
    rowVersion,
  });
}

async function bowInFinish(shop: TestShop, systemId: string): Promise<Flow> {
  const { id } = await takeIn(shop, { services: ['scuff-recoat'] }, 'shop');
  const flow = new Flow(shop, id);
  await choose(shop, id, systemId);
  const override = { reason: 'only its finish is looked at' };
  const moved = await flow.move('finish', { override });
  if (moved.outcome !== 'moved') throw new Error(JSON.stringify(moved));
  return flow;
}

/** A shop with a two-part finish on the shelf, enough for some batches. */
export async function finishKit(given?: TestShop): Promise<FinishKit> {
  const shop = given ?? (await testShop());
  const resinId = await stock(shop, 'Satin base', 'finish', [
    { number: 'R-1', expiresOn: '2026-06-30', quantity: 500 },
    { number: 'R-2', expiresOn: '2026-12-31', quantity: 1000 },
  ]);
  const hardenerId = await stock(shop, 'Satin hardener', 'hardener', [
    { number: 'H-1', expiresOn: '2026-04-30', quantity: 400 },
  ]);
  const thinnerId = await stock(shop, 'Slow thinner', 'thinner', [
    { number: 'T-1', expiresOn: null, quantity: 1000 },
  ]);
  const { id: systemId } = await addFinishSystem(shop.owner, {
    commandId: newCommandId(),
    sheet: twoPartSheet,
    resinId,
    hardenerId,
    thinnerId,
    active: true,
  });
  return {
    shop,
    systemId,
    resinId,
    hardenerId,
    thinnerId,
    bow: () => bowInFinish(shop, systemId),
    air: (more = {}) =>
      recordAir(shop.owner, {
        commandId: newCommandId(),
        airF: 70,
        humidityPercent: 50,
        surfaceF: 70,
        note: '',
        at: null,
        ...more,
      }),
    mix: (more = {}) =>
      mixBatch(shop.owner, {
        commandId: newCommandId(),
        finishSystemId: systemId,
        name: '',
        wanted: { by: 'volume', ml: 330 },
        mixF: 70,
        at: null,
        note: '',
        ...more,
      }),
    spray: (bows, more) =>
      spray(shop.owner, {
        commandId: newCommandId(),
        ...sessionOf(
          systemId,
          bows.map(({ orderId }) => orderId),
        ),
        note: '',
        used: null,
        ...more,
      }),
  };
}

/** A batch that was mixed and may be used. */
export async function usableBatch(kit: FinishKit, more: Partial<Mix> = {}): Promise<string> {
  const mixed = await kit.mix(more);
  if (mixed.outcome !== 'mixed') throw new Error(mixed.troubles.join(' '));
  kit.shop.clock.advance(16 * 60_000);
  return mixed.id;
}

/** A bow with one clear coat on record, from a batch that is good for a while yet. */
export async function coatedBow() {
  const kit = await finishKit();
  const bow = await kit.bow();
  await kit.air();
  const batchId = await usableBatch(kit);
  await kit.spray([bow], { batchId });
  return { kit, bow, batchId };
}
