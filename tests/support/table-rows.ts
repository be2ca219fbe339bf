import { sql } from 'kysely';
import type { TestShop } from './test-shop.ts';

type Row = Record<string, unknown>;

/** What was told, said, printed or done: these only ever grow. */
const growing = [
  'command',
  'command_change',
  'order_history',
  'consent',
  'consent_answer',
  'paper',
];

/**
 * Every row of every table that holds records, without row versions, in one order. What only grows
 * is left out; what is found by searching is in.
 */
export async function recordRows(shop: TestShop): Promise<Record<string, Row[]>> {
  const { read } = shop.core.shop();
  const tables = await sql<{ name: string }>`
    SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%'
      AND name NOT LIKE 'search_%' ORDER BY name`.execute(read);
  const all: Record<string, Row[]> = {};
  for (const { name } of tables.rows.filter((table) => !growing.includes(table.name))) {
    const { rows } = await sql<Row>`SELECT * FROM ${sql.table(name)}`.execute(read);
    all[name] = rows
      .map(({ row_version: _, ...row }) => row)
      .sort((a, b) => (JSON.stringify(a) < JSON.stringify(b) ? -1 : 1));
  }
  return all;
}
