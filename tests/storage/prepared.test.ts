import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { withPreparedStatements } from '../../core/storage/prepared.ts';

test('the same words give the same statement, with fresh values each time', () => {
  const db = withPreparedStatements(new Database(':memory:'));
  const one = db.prepare('SELECT ? AS told');
  expect(one.all(['first'])).toEqual([{ told: 'first' }]);
  const two = db.prepare('SELECT ? AS told');
  expect(two).toBe(one);
  expect(two.all(['second'])).toEqual([{ told: 'second' }]);
  db.close();
});

test('a statement long unused is let go and prepared anew', () => {
  const db = withPreparedStatements(new Database(':memory:'));
  const one = db.prepare('SELECT 0');
  for (let n = 1; n <= 400; n += 1) db.prepare(`SELECT ${n}`);
  const again = db.prepare('SELECT 0');
  expect(again).not.toBe(one);
  expect(again.all([])).toEqual([{ 0: 0 }]);
  db.close();
});

test('a statement outlives a change of the table it reads', () => {
  const db = withPreparedStatements(new Database(':memory:'));
  db.prepare('CREATE TABLE limb (id TEXT)').run([]);
  const all = db.prepare('SELECT * FROM limb');
  expect(all.all([])).toEqual([]);
  db.prepare('ALTER TABLE limb ADD COLUMN note TEXT').run([]);
  db.prepare('INSERT INTO limb VALUES (?, ?)').run(['upper', 'twist']);
  expect(db.prepare('SELECT * FROM limb').all([])).toEqual([{ id: 'upper', note: 'twist' }]);
  db.close();
});
