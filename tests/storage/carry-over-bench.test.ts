import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { migrations } from '../../migrations/index.ts';

/** A shop of version 2 with one order at the bench, and what was noted on it, brought forward. */
function broughtForward(bowId: string | null = 'b') {
  const db = new Database(':memory:');
  db.pragma('foreign_keys = OFF');
  for (const step of migrations.filter(({ version }) => version <= 2)) step.up(db);
  db.exec(`
    INSERT INTO person VALUES ('p', 'Ida Penn', 'IP', 'owner', 1, 1);
    INSERT INTO bow (id, customer_id, kind, construction, take_down, hand, maker, model, serial,
      marked_draw_reference, back_facing, notes, created_at, row_version)
    VALUES ('b', NULL, 'longbow', 'glass-laminated', 'one-piece', 'right', 'Oldfield', 'Heron', '',
      'amo', 'E-glass', '', '2026-01-05T09:00:00.000Z', 3);
    INSERT INTO shop_order (id, number, customer_id, bow_id, services_json, route_json, stage,
      stage_since, tiller_target, inscription, ship_to, private_notes, customer_notes, created_at,
      row_version)
    VALUES ('o', '26-0001', NULL, ${bowId === null ? 'NULL' : `'${bowId}'`}, '["reduce-weight"]',
      '["requested","arrived","agreed","weight-work"]', 'weight-work', '2026-01-05T09:00:00.000Z',
      '', '', '', '', '', '2026-01-05T09:00:00.000Z', 4);
  `);
  const insert = db.prepare(
    "INSERT INTO entry VALUES (?, 'o', ?, ?, '2026-01-05', 'p', ?, NULL, ?, ?, 1)",
  );
  insert.run('e1', 'removal', 'ok', 'upper, 1/64 per side', '2026-01-05T09:00:01.000Z', null);
  insert.run('e2', 'glass-check', 'ok', 'none seen', '2026-01-05T09:00:02.000Z', null);
  insert.run('e3', 'removal', 'ok', 'lower, 1/64', '2026-01-05T09:00:03.000Z', 'another bow');
  insert.run('e4', 'glass-check', 'not-ok', 'strands', '2026-01-05T09:00:04.000Z', null);
  insert.run('e5', 'tiller-read', 'ok', '+1/8', '2026-01-05T09:00:05.000Z', null);
  for (const step of migrations.filter(({ version }) => version > 2)) step.up(db);
  expect(db.pragma('foreign_key_check')).toEqual([]);
  const all = (table: string) => db.prepare(`SELECT * FROM ${table} ORDER BY id`).all();
  return { removals: all('removal'), glassChecks: all('glass_check'), entries: all('entry') };
}

test('bites noted in words become removals, the struck-out ones struck out', () => {
  const { removals } = broughtForward();
  expect(removals).toMatchObject([
    {
      id: 'removal-e1',
      order_id: 'o',
      bow_id: 'b',
      plan_id: null,
      method: 'noted',
      modelled_drop: null,
      planned_at: '2026-01-05T09:00:01.000Z',
      done_at: '2026-01-05T09:00:01.000Z',
      remeasured_at: null,
      note: 'upper, 1/64 per side',
      person_id: 'p',
      struck_reason: null,
    },
    { id: 'removal-e3', struck_reason: 'another bow' },
  ]);
});

test('a failed glass check stays failed, its signs not known', () => {
  const { glassChecks } = broughtForward();
  const unseen = { show_through: 0, strands: 0, run_out: 0, exposed_core: 0 };
  expect(glassChecks).toMatchObject([
    { id: 'glass-check-e2', outcome: 'ok', ...unseen, checked_at: '2026-01-05T09:00:02.000Z' },
    { id: 'glass-check-e4', outcome: 'not-ok', ...unseen, note: 'strands' },
  ]);
});

test('the entries stay as they were written', () => {
  expect(broughtForward().entries).toHaveLength(5);
});

test('what was noted where nobody had named the bow stays in words', () => {
  expect(broughtForward(null)).toMatchObject({ removals: [], glassChecks: [] });
});
