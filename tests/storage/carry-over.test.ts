import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { firstShop } from '../../migrations/0001-first-shop.ts';
import { wholeFlow } from '../../migrations/0002-whole-flow.ts';

interface Noted {
  item: string;
  note: string;
  outcome?: 'ok' | 'not-ok';
  struck?: string;
}

/** A shop of version 1 with one order, and what was noted on it in turn, brought to version 2. */
function broughtForward(entries: readonly Noted[]) {
  const db = new Database(':memory:');
  db.pragma('foreign_keys = OFF');
  firstShop.up(db);
  db.exec(`
    INSERT INTO person VALUES ('p', 'Ida Penn', 'IP', 'owner', 1, 1);
    INSERT INTO bow VALUES ('b', NULL, 'longbow', 'glass-laminated', 'one-piece', 'right', 'Oldfield',
      'Heron', '', 66, 52, 28, 'amo', 30, 'E-glass', '', '2026-01-05T09:00:00.000Z', 3);
    INSERT INTO shop_order VALUES ('o', '26-0001', NULL, 'b', '["scuff-recoat"]',
      '["requested","arrived","packed","shipped"]', 'arrived', '2026-01-05T09:00:00.000Z', NULL, NULL,
      '', NULL, NULL, '', '', '', '', '2026-01-05T09:00:00.000Z', 4);
  `);
  const insert = db.prepare(
    "INSERT INTO entry VALUES (?, 'o', ?, ?, '2026-01-05', 'p', ?, NULL, ?, ?, 1)",
  );
  entries.forEach(({ item, note, outcome = 'ok', struck = null }, i) => {
    insert.run(`e${i}`, item, outcome, note, `2026-01-05T09:00:0${i}.000Z`, struck);
  });
  wholeFlow.up(db);
  expect(db.pragma('foreign_key_check')).toEqual([]);
  const all = (table: string) => db.prepare(`SELECT * FROM ${table}`).all();
  return {
    arrivals: all('arrival'),
    belongings: all('belonging'),
    bows: all('bow'),
    entries: all('entry'),
  };
}

test('what was noted of the box, the condition and the check becomes the arrival record', () => {
  const { arrivals, belongings, entries } = broughtForward([
    { item: 'arrived-on', note: 'carrier' },
    { item: 'condition', note: 'scratched' },
    { item: 'condition', note: 'finish worn at the grip' },
    { item: 'belongings', note: 'string, quiver' },
    { item: 'arrival-check', note: 'limbs in line, brace 7 1/4' },
  ]);
  expect(arrivals).toMatchObject([
    {
      order_id: 'o',
      opened_on: '2026-01-05',
      came_by: 'carrier',
      condition: 'finish worn at the grip',
      strung: 'strung',
      alignment: 'limbs in line, brace 7 1/4',
      completed_at: '2026-01-05T09:00:04.000Z',
      completed_by: 'p',
    },
  ]);
  expect(belongings).toMatchObject([{ order_id: 'o', what: 'string, quiver', back_at: null }]);
  expect(entries).toHaveLength(5);
});

test('"none" becomes nothing came along; not strung keeps its reason; ticked back stays ticked', () => {
  const none = broughtForward([
    { item: 'condition', note: 'as new' },
    { item: 'belongings', note: 'None.' },
    { item: 'arrival-check', note: 'not strung because the upper fade is open' },
  ]);
  expect(none.arrivals).toMatchObject([
    {
      nothing_came_along: 1,
      strung: 'not-strung',
      not_strung_because: 'not strung because the upper fade is open',
    },
  ]);
  expect(none.belongings).toEqual([]);
  const back = broughtForward([
    { item: 'belongings', note: 'string' },
    { item: 'belongings-back', note: 'in the tube' },
  ]);
  expect(back.arrivals).toEqual([]);
  expect(back.belongings).toMatchObject([
    { what: 'string', back_by: 'p', back_note: 'in the tube' },
  ]);
});

test('what was struck out or not in order carries nothing over', () => {
  const { arrivals, belongings } = broughtForward([
    { item: 'condition', note: 'wrong bow', struck: 'wrong order' },
    { item: 'arrival-check', note: 'looked over' },
    { item: 'arrival-check', note: 'twist', outcome: 'not-ok' },
  ]);
  expect(arrivals).toEqual([]);
  expect(belongings).toEqual([]);
});

test('one facing becomes two, and no row version is touched', () => {
  const { bows } = broughtForward([]);
  expect(bows).toMatchObject([{ back_facing: 'E-glass', belly_facing: 'E-glass', row_version: 3 }]);
});
