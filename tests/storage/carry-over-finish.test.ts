import { join } from 'node:path';
import { describe, expect, onTestFinished, test } from 'vitest';
import { usualTransferPercent } from '../../core/finish/amount.ts';
import { Core } from '../../core/host/core.ts';
import { orderFinishNow } from '../../core/shop/finish/order-finish.ts';
import { finishRoom } from '../../core/shop/finish/room.ts';
import { finishFacts } from '../../core/shop/papers/finish-facts.ts';
import { getShop } from '../../core/shop/setup/shop.ts';
import { listStores } from '../../core/shop/stores/list.ts';
import { listBackups } from '../../core/storage/backup.ts';
import { migrate } from '../../core/storage/migrate.ts';
import { openWriter } from '../../core/storage/open.ts';
import { migrations } from '../../migrations/index.ts';
import type { Stage } from '../../shared/stages.ts';
import { TestClock } from '../support/clock.ts';
import { choose, finishKit, usableBatch } from '../support/finish-kit.ts';
import { tempFolder } from '../support/temp-folder.ts';
import type { TestShop } from '../support/test-shop.ts';
import { Flow } from '../support/whole-flow.ts';

interface Noted {
  item: string;
  note?: string;
  outcome?: 'ok' | 'not-ok';
  struck?: string;
}

interface OldOrder {
  id: string;
  stage: Stage;
  noted: readonly Noted[];
}

const route = ['requested', 'arrived', 'agreed', 'strip-sand', 'finish', 'cure', 'final-check'];

/** A shop of version 2 as its owner had set it up, with orders of its own bows in the finish room. */
function writeVersion2(path: string, orders: readonly OldOrder[]): void {
  const db = openWriter(path);
  migrate(
    db,
    migrations.filter(({ version }) => version <= 2),
  );
  db.exec(`
    INSERT INTO shop (id, name, street, city, region, postal_code, country, phone, email,
      paper_format, tag_format, contents_on_tag, row_version, is_demo, reminder_days_json,
      storage_fee_days, abandoned_days)
    VALUES ('shop', 'Fernhill Bow Works', '4 Mill Lane', 'Ashdale', 'VT', '05000', 'USA',
      '555 0100', 'bench@fernhill.example', 'a4', 'a6', 1, 7, 0, '[5,14]', 45, 120);
    INSERT INTO person VALUES ('p', 'Ida Penn', 'IP', 'owner', 1, 1);
  `);
  const bow = db.prepare(
    `INSERT INTO bow (id, customer_id, kind, construction, take_down, hand, maker, model, serial,
       marked_draw_reference, back_facing, notes, created_at, row_version)
     VALUES (?, NULL, 'longbow', 'glass-laminated', 'one-piece', 'right', 'Oldfield', 'Heron', '',
       'amo', 'E-glass', '', '2026-01-05T09:00:00.000Z', 3)`,
  );
  const order = db.prepare(
    `INSERT INTO shop_order (id, number, customer_id, bow_id, services_json, route_json, stage,
       stage_since, tiller_target, inscription, ship_to, private_notes, customer_notes, created_at,
       row_version)
     VALUES (?, ?, NULL, ?, '["scuff-recoat"]', ?, ?, '2026-01-05T09:00:00.000Z', '', '', '', '', '',
       '2026-01-05T09:00:00.000Z', 4)`,
  );
  const entry = db.prepare(
    "INSERT INTO entry VALUES (?, ?, ?, ?, '2026-02-20', 'p', ?, NULL, ?, ?, 1)",
  );
  for (const [index, { id, stage, noted }] of orders.entries()) {
    bow.run(`bow-${id}`);
    const all = JSON.stringify([...route, 'packed', 'collected']);
    order.run(id, `26-000${index + 1}`, `bow-${id}`, all, stage);
    for (const [n, { item, note = 'as noted', outcome = 'ok', struck = null }] of noted.entries()) {
      const at = `2026-02-20T09:00:0${n}.000Z`;
      entry.run(`${id}-${n}`, id, item, outcome, note, at, struck);
    }
  }
  db.close();
}

/** That shop, opened with this program. */
async function broughtForward(orders: readonly OldOrder[]) {
  const folder = tempFolder();
  writeVersion2(join(folder, 'shop.sqlite'), orders);
  const clock = new TestClock();
  const core = new Core({ dataFolder: folder, now: clock.now });
  onTestFinished(() => core.close());
  expect(await core.settled()).toMatchObject({ phase: 'ready', schemaVersion: migrations.length });
  const actor = { personId: 'p', name: 'Ida Penn', role: 'owner', device: 'test' } as const;
  const owner = { ...core.shop(), actor };
  const shop: TestShop = { core, clock, folder, owner, as: () => owner };
  return { shop, flow: (id: string) => new Flow(shop, id) };
}

/** Finish items that stand against the next stage, in words; empty where none does. */
async function against(flow: Flow, to: Stage): Promise<string[]> {
  const result = await flow.move(to);
  if (result.outcome !== 'refused') return [];
  return result.missing
    .filter(({ section }) => section === 'finish')
    .map(({ item, sentence }) => `${item}: ${sentence}`);
}

describe('before finish', () => {
  const sanded = (noted: readonly Noted[]) => [{ id: 'o', stage: 'strip-sand' as const, noted }];

  test('last grit, finish and air as they were noted let the bow into finish', async () => {
    const { flow } = await broughtForward(
      sanded([{ item: 'last-grit' }, { item: 'finish-system' }, { item: 'air' }]),
    );
    expect(await against(flow('o'), 'finish')).toEqual([]);
    expect((await flow('o').order()).card.stage).toBe('finish');
  });

  test('what nobody had noted, or noted as not in order, or struck out, is missing as before', async () => {
    const { flow } = await broughtForward(
      sanded([
        { item: 'last-grit', outcome: 'not-ok' },
        { item: 'air', struck: 'wrong order' },
      ]),
    );
    const missing = await against(flow('o'), 'finish');
    expect(missing.map((each) => each.split(':')[0])).toEqual([
      'last-grit',
      'finish-system',
      'air',
    ]);
    expect(missing[0]).toBe('last-grit: Last grit: recorded as not in order.');
  });
});

describe('in cure and at the final check', () => {
  const waiting = (noted: readonly Noted[]) => [{ id: 'o', stage: 'cure' as const, noted }];

  test('the time to string and flex, noted as passed, opens the final check', async () => {
    const { flow } = await broughtForward(
      waiting([{ item: 'coat' }, { item: 'string-and-flex', note: 'three days at 70 F' }]),
    );
    expect(await against(flow('o'), 'final-check')).toEqual([]);
    expect((await flow('o').order()).card.stage).toBe('final-check');
  });

  test.each([
    ['not noted', []],
    ['struck out', [{ item: 'string-and-flex', struck: 'another bow' }]],
  ])('%s, it stays shut', async (_, noted) => {
    const { flow } = await broughtForward(waiting([{ item: 'coat' }, ...noted]));
    expect(await against(flow('o'), 'final-check')).toEqual([
      expect.stringMatching(/^string-and-flex: No coat recorded/),
    ]);
  });

  test('noted last as not in order, it stays shut and says so', async () => {
    const { flow } = await broughtForward(
      waiting([{ item: 'string-and-flex' }, { item: 'string-and-flex', outcome: 'not-ok' }]),
    );
    expect(await against(flow('o'), 'final-check')).toEqual([
      'string-and-flex: Time to string and flex passed: recorded as not in order.',
    ]);
  });

  test('safe to wrap counts on the way into the box, and is missed where it was not noted', async () => {
    const { flow } = await broughtForward([
      { id: 'wrapped', stage: 'final-check', noted: [{ item: 'safe-to-wrap' }] },
      { id: 'tacky', stage: 'final-check', noted: [{ item: 'coat' }] },
    ]);
    expect(await against(flow('wrapped'), 'packed')).toEqual([]);
    expect(await against(flow('tacky'), 'packed')).toEqual([
      expect.stringMatching(/^safe-to-wrap: No coat recorded/),
    ]);
  });

  test('papers tell the finish in the words of the old notes', async () => {
    const { flow } = await broughtForward(
      waiting([
        { item: 'finish-system', note: 'two-part clear, sheet of 2025-06' },
        { item: 'coat', note: 'both limbs' },
        { item: 'string-and-flex', note: 'three days at 70 F' },
      ]),
    );
    expect(finishFacts(await flow('o').order())).toEqual({
      finish: 'two-part clear, sheet of 2025-06',
      lastCoatOn: '2026-02-20',
      strung: { on: '2026-02-20', words: 'three days at 70 F' },
      safeToWrap: null,
      cured: null,
    });
  });
});

test('a coat recorded in the finish room since then counts more than the old note', async () => {
  const noted = [{ item: 'finish-system' }, { item: 'string-and-flex' }];
  const { shop, flow } = await broughtForward([{ id: 'o', stage: 'finish', noted }]);
  const kit = await finishKit(shop);
  await choose(shop, 'o', kit.systemId);
  await kit.air();
  const coated = await kit.spray([flow('o')], { batchId: await usableBatch(kit) });
  expect(coated.outcome).toBe('recorded');
  await flow('o').move('cure');
  expect(await against(flow('o'), 'final-check')).toEqual([
    "string-and-flex: Not yet safe to string and flex: by the finish's sheet in 2 days.",
  ]);
});

test('nothing is made up from the notes: the stores are empty, the room has no finish, no clock runs', async () => {
  const noted = [
    { item: 'last-grit', note: 'limbs 320, riser 220' },
    { item: 'air', note: '70 F, 50 percent' },
    { item: 'pot-life', note: 'mixed at 9:00, until 11:00' },
    { item: 'lots-in-date', note: 'R-118, H-31' },
    { item: 'coat', note: 'both limbs' },
  ];
  const { shop, flow } = await broughtForward([{ id: 'o', stage: 'finish', noted }]);
  const stores = await listStores(shop.owner);
  expect(stores.consumables).toEqual([]);
  expect(stores.cautions).toEqual([]);
  for (const table of ['lot', 'stock_move', 'batch', 'air_reading', 'coat', 'sanding'] as const) {
    expect(await shop.owner.read.selectFrom(table).selectAll().execute(), table).toEqual([]);
  }
  const room = await finishRoom(shop.owner);
  expect(room).toMatchObject({ systems: [], batches: [], air: null, clockTrouble: null });
  expect(room.bows).toMatchObject([{ orderId: 'o', lastCoatAt: null, finishSystemId: null }]);
  expect(await orderFinishNow(shop.owner, 'o')).toMatchObject({
    chosen: null,
    coats: [],
    cure: [],
  });
  const { entries } = await flow('o').order();
  expect(entries.map(({ item, note }) => ({ item, note })).reverse()).toEqual(noted);
});

test('settings stay as the owner had set them; what is new begins as in a new shop', async () => {
  const { shop } = await broughtForward([]);
  expect(await getShop(shop.owner)).toMatchObject({
    name: 'Fernhill Bow Works',
    paperFormat: 'a4',
    tagFormat: 'a6',
    contentsOnTag: true,
    reminderDays: [5, 14],
    storageFeeDays: 45,
    abandonedDays: 120,
    rowVersion: 7,
    isDemo: false,
  });
  const { slots, transferPercent } = await finishRoom(shop.owner);
  expect({ slots, transferPercent }).toEqual({
    slots: { used: 0, all: 6 },
    transferPercent: usualTransferPercent,
  });
  expect(listBackups(shop.folder)).toMatchObject([{ schemaVersion: 2 }]);
});
