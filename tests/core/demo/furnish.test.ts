import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database, { type Database as Connection } from 'better-sqlite3';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { Core } from '../../../core/host/core.ts';
import { getBench } from '../../../core/shop/bench/bench-view.ts';
import { forecastRecord } from '../../../core/shop/learned/forecast-record.ts';
import { boardCards } from '../../../core/shop/orders/board.ts';
import { getOrder } from '../../../core/shop/orders/detail.ts';
import { shippingTagData } from '../../../core/shop/papers/shipping-tag-data.ts';
import { workOrderData } from '../../../core/shop/papers/work-order-data.ts';
import { getShop } from '../../../core/shop/setup/shop.ts';
import { getToday } from '../../../core/shop/today/today.ts';
import type { ShopContext } from '../../../core/storage/context.ts';
import { furnishDemo } from '../../../demo-data/furnish.ts';
import { PictureBook } from '../../../demo-data/story/picture-book.ts';
import { orderDetail } from '../../../shared/contract/orders.ts';
import { services, stages } from '../../../shared/stages.ts';
import { leastStrokeJobs } from '../../../shared/weight-plan.ts';

const today = '2026-11-25';
/** Some ten seconds on a machine of its own; the tests share theirs. */
const patience = 400_000;

interface Furnished {
  core: Core;
  folder: string;
  db: Connection;
  progress: number[];
}

const pictures = new PictureBook();
const open: Furnished[] = [];

async function furnished(): Promise<Furnished> {
  const folder = mkdtempSync(join(tmpdir(), 'tillermark-demo-'));
  const core = new Core({ dataFolder: folder });
  await core.settled();
  const progress: number[] = [];
  await furnishDemo(core.shop(), {
    today,
    pictures,
    onProgress: (done) => {
      progress.push(done);
    },
  });
  const db = new Database(join(folder, 'shop.sqlite'), { readonly: true });
  const made = { core, folder, db, progress };
  open.push(made);
  return made;
}

let shop: Furnished;
let again: Furnished;

beforeAll(async () => {
  shop = await furnished();
  again = await furnished();
}, patience);

afterAll(async () => {
  for (const { core, folder, db } of open) {
    db.close();
    await core.close();
    rmSync(folder, { recursive: true, force: true });
  }
});

type Row = Record<string, unknown>;
const rows = (sql: string, of = shop): Row[] => of.db.prepare(sql).all() as Row[];
const values = (sql: string) => rows(sql).flatMap((row) => Object.values(row));

function owner(): ShopContext {
  const [row] = rows("SELECT id, name FROM person WHERE role = 'owner'");
  const actor = {
    personId: String(row?.id),
    name: String(row?.name),
    role: 'owner' as const,
    device: 'test',
  };
  return { ...shop.core.shop(), actor };
}

test('25 customers, 45 bows and 37 orders of a shop that says it is a demo', async () => {
  expect(values('SELECT count(*) FROM customer')).toEqual([25]);
  expect(values('SELECT count(*) FROM bow')).toEqual([45]);
  expect(values('SELECT count(*) FROM shop_order')).toEqual([37]);
  expect((await getShop(shop.core.shop())).isDemo).toBe(true);
});

test('every stage, service and way is there', () => {
  expect(new Set(values('SELECT stage FROM shop_order'))).toEqual(new Set(stages));
  const named = values('SELECT services_json FROM shop_order').flatMap((json) =>
    JSON.parse(String(json)),
  );
  expect(new Set(named)).toEqual(new Set(services));
  const routes = values('SELECT DISTINCT route_json FROM shop_order').map((json) =>
    JSON.parse(String(json)),
  );
  expect(routes.some((route) => route.indexOf('strip-sand') < route.indexOf('weight-work'))).toBe(
    true,
  );
  expect(routes.some((route) => route.includes('collected'))).toBe(true);
  expect(values('SELECT DISTINCT going_home FROM shop_order WHERE going_home IS NOT NULL')).toEqual(
    expect.arrayContaining(['declined', 'refused']),
  );
  expect(values("SELECT count(*) FROM shop_order WHERE came_as = 'limbs-only'")).toEqual([1]);
  expect(values('SELECT count(*) FROM shop_order WHERE customer_id IS NULL')).not.toEqual([0]);
});

test.each([
  ['kind', ['longbow', 'hybrid', 'recurve']],
  ['construction', ['glass-laminated', 'all-wood', 'other']],
  ['take_down', ['one-piece', 'sleeve', 'bolted three-piece']],
  ['back_facing', ['E-glass', 'clear over veneer', 'carbon', 'wood', 'bamboo', 'unknown']],
  ['marked_draw_reference', ['amo', 'to-back', 'unknown']],
])('bows of every %s', (column, expected) => {
  expect(new Set(values(`SELECT ${column} FROM bow`))).toEqual(new Set(expected));
});

test('holds, damage and shortfalls at every turn', () => {
  expect(values('SELECT DISTINCT kind FROM hold')).toEqual(
    expect.arrayContaining(['customer', 'material', 'claim']),
  );
  expect(values('SELECT count(*) FROM reminder')).not.toEqual([0]);
  expect(values('SELECT DISTINCT kind FROM incident')).toEqual(
    expect.arrayContaining(['damaged-here', 'damaged-in-transit']),
  );
  expect(Number(values('SELECT count(*) FROM undershoot')[0])).toBeGreaterThanOrEqual(2);
  expect(values('SELECT DISTINCT grade FROM finding')).toEqual(
    expect.arrayContaining(['cosmetic', 'watch', 'stop']),
  );
});

test('the page of every order can be read, and every photograph belongs to an order', async () => {
  const ctx = owner();
  const cards = await boardCards(ctx, true);
  expect(cards.length).toBeGreaterThan(25);
  for (const { id } of rows('SELECT id FROM shop_order')) {
    const order = await getOrder(ctx, String(id));
    expect(orderDetail.safeParse(order).error).toBeUndefined();
    expect(order.history.length).toBeGreaterThan(0);
  }
  expect(values('SELECT count(*) FROM attachment')[0]).toBeGreaterThan(40);
  expect(values('SELECT count(*) FROM attachment WHERE order_id IS NULL')).toEqual([0]);
});

test('closed jobs of every kind of bow tell how the forecasts fared', async () => {
  const record = await forecastRecord(owner());
  const number = (job: { orderNumber: string }) => `'${job.orderNumber}'`;
  const kinds = values(`SELECT DISTINCT bow.kind FROM bow JOIN shop_order ON bow_id = bow.id
    WHERE number IN (${record.jobs.map(number).join(', ')})`);
  expect(new Set(kinds)).toEqual(new Set(['longbow', 'hybrid', 'recurve']));
  expect(new Set(record.jobs.map((job) => job.construction))).toEqual(
    new Set(['glass-laminated', 'all-wood']),
  );
  expect(record.untold).toEqual([]);
  expect(record.jobs.some((job) => job.effectiveness !== null)).toBe(true);
  expect(record.jobs.filter(({ bites }) => bites > 0).length).toBeGreaterThan(4);
  for (const job of record.jobs) {
    expect(job.allowanceThou, job.orderNumber).toBeGreaterThan(0);
    expect(job.measuredLbf, job.orderNumber).toBeGreaterThan(job.targetLbf - 2);
    expect(job.measuredLbf, job.orderNumber).toBeLessThan(job.targetLbf + 1.1);
  }
  const glass = record.strokes.find(({ construction }) => construction === 'glass-laminated');
  expect(glass?.jobs).toBeGreaterThanOrEqual(leastStrokeJobs);
  expect(glass?.aHundred?.mean).toBeGreaterThan(0.4);
  expect(glass?.aHundred?.mean).toBeLessThan(2);
});

test('at the bench one bow waits for its next bite, and one for sanding only', async () => {
  const atWork = values("SELECT id FROM shop_order WHERE stage = 'weight-work'").map(String);
  const views = await Promise.all(atWork.map((id) => getBench(owner(), id)));
  const steps = views.map(({ step }) => step.kind);
  expect(steps).toContain('bite');
  expect(steps).toContain('sand-only');
  expect(views.find(({ step }) => step.kind === 'bite')?.bitesTaken).toBeGreaterThan(0);
});

test('its papers say that they are of a demo', async () => {
  const ctx = owner();
  const details = await getShop(ctx);
  const order = await getOrder(ctx, String(values('SELECT id FROM shop_order LIMIT 1')[0]));
  const printedAt = ctx.now();
  const tag = shippingTagData(order, details, { format: '4x6', copy: 'parcel', printedAt });
  const paper = workOrderData(order, details, null, { format: 'letter', copy: 'bench', printedAt });
  expect(tag.from.name).toBe('DEMO - Larkmere Bow Bench');
  expect(paper.shop.name).toBe('DEMO - Larkmere Bow Bench');
});

test('there is something late, due, waiting, coming, ready and short in the stores today', async () => {
  const { items } = await getToday(owner(), today);
  expect(new Set(items.map((item) => item.group))).toEqual(
    new Set(['late', 'today', 'waiting', 'soon', 'ready', 'stores']),
  );
});

test('nothing was written but by commands: every record is what its changes add up to', () => {
  const last = rows(`SELECT table_name, row_id, before_json, after_json FROM command_change
    ORDER BY table_name, row_id, row_version`);
  const state = new Map<string, Row | null>();
  for (const { table_name, row_id, before_json, after_json } of last) {
    const key = `${table_name} ${row_id}`;
    const row = (json: unknown): Row | null => JSON.parse(String(json));
    expect(row(before_json), key).toEqual(state.get(key) ?? null);
    state.set(key, row(after_json));
  }
  for (const table of new Set(last.map((row) => String(row.table_name)))) {
    for (const row of rows(`SELECT * FROM ${table}`)) {
      expect(state.get(`${table} ${row.id}`), `${table} ${row.id}`).toEqual(row);
    }
  }
});

test('everything happened before today, in one order of time, by three people', () => {
  const at = values('SELECT at FROM command ORDER BY rowid').map(String);
  expect(at).toEqual(at.toSorted());
  expect(at.at(-1)?.slice(0, 10)).toBe('2026-11-24');
  expect(values('SELECT count(DISTINCT person_id) FROM command')).toEqual([3]);
  expect(shop.progress).toEqual(shop.progress.toSorted((a, b) => a - b));
  expect(shop.progress.at(-1)).toBe(1);
});

/** Every row of every table, with each id named by its first appearance. */
function storyOf(of: Furnished): string {
  const tables = rows("SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name", of)
    .map((row) => String(row.name))
    .filter((name) => !/^(sqlite_|search)/.test(name));
  const names = new Map<string, string>();
  const text = tables
    .map((table) => JSON.stringify(rows(`SELECT * FROM ${table} ORDER BY rowid`, of)))
    .join('\n');
  return text.replaceAll(/[0-9a-f]{8}-[0-9a-f-]{27}/g, (id) => {
    const name = names.get(id) ?? `#${names.size}`;
    names.set(id, name);
    return name;
  });
}

test('furnished twice, it is the same story', () => {
  expect(storyOf(again)).toBe(storyOf(shop));
});

test('weights go down, and nobody takes more than a tenth and a bit', () => {
  const weighed = rows(`SELECT order_id, phase, max(force_lbf) AS pounds FROM reading
    JOIN reading_pull ON reading_pull.reading_id = reading.id
    WHERE struck_reason IS NULL AND phase IN ('arrival', 'after-sanding')
    GROUP BY order_id, phase`);
  const byOrder = Map.groupBy(weighed, (row) => row.order_id);
  for (const readings of byOrder.values()) {
    const pounds = (phase: string) => Number(readings.find((row) => row.phase === phase)?.pounds);
    const lost = pounds('arrival') - pounds('after-sanding');
    if (Number.isNaN(lost)) continue;
    expect(lost).toBeGreaterThan(0.5);
    expect(lost).toBeLessThan(8.5);
  }
});
