import { type Kysely, sql } from 'kysely';
import { ShopError } from '../../../shared/errors.ts';
import type { Tables } from '../../storage/tables.ts';
import { dayOf } from '../day.ts';
import { type RowWrite, type StoredRow, sameRow } from './done.ts';
import { nounOf } from './words.ts';

// A table known only by its name; what comes back is compared column by column.
// biome-ignore lint/suspicious/noExplicitAny: Kysely's types need the table's name.
type LooseDb = Kysely<any>;

export async function rowNow(
  db: Kysely<Tables>,
  write: Pick<RowWrite, 'table' | 'id'>,
): Promise<StoredRow | null> {
  const row = await (db as LooseDb)
    .selectFrom(write.table as string)
    .selectAll()
    .where('id', '=', write.id)
    .executeTakeFirst();
  return (row as StoredRow | undefined) ?? null;
}

/**
 * Who really changed the row after this write. A change that was taken back counts for nothing,
 * and neither does one that only raised the row version.
 */
async function laterChange(db: Kysely<Tables>, write: RowWrite) {
  const changes = await db
    .selectFrom('command_change')
    .innerJoin('command', 'command.id', 'command_change.command_id')
    .leftJoin('person', 'person.id', 'command.person_id')
    .leftJoin('command as undoing', 'undoing.undoes_id', 'command.id')
    .select(['command_change.before_json', 'command_change.after_json'])
    .select(['command.at', 'person.name'])
    .where('command_change.table_name', '=', write.table)
    .where('command_change.row_id', '=', write.id)
    .where('command_change.row_version', '>', write.version)
    .where('command.undoes_id', 'is', null)
    .where('undoing.id', 'is', null)
    .orderBy('command_change.row_version', 'desc')
    .execute();
  return changes.find(({ before_json, after_json }) => {
    const [before, after] = [before_json, after_json].map((json) =>
      json === null ? null : (JSON.parse(json) as StoredRow),
    );
    return !sameRow(before ?? null, after ?? null);
  });
}

const columnsOf = (row: StoredRow) => Object.keys(row).sort().join();

/** Refusal where the row is no longer what the command left. */
export async function rowChanged(db: Kysely<Tables>, write: RowWrite): Promise<ShopError | null> {
  const noun = nounOf(write.table);
  const later = await laterChange(db, write);
  if (later !== undefined) {
    const who = later.name ?? 'Somebody';
    return new ShopError(
      'CONFLICT',
      `${who} changed the ${noun} since, on ${dayOf(later.at)}. Undo that first, or change it by hand.`,
      { [write.table]: write.id, person: who, at: later.at },
    );
  }
  const now = await rowNow(db, write);
  if (now === null || write.after === null || !sameRow(now, write.after)) {
    return new ShopError('CONFLICT', `The ${noun} is no longer as this left it.`, {
      [write.table]: write.id,
    });
  }
  if (write.before !== null && columnsOf(write.before) !== columnsOf(now)) {
    return new ShopError('CONFLICT', 'The program has changed since. Change it by hand.', {
      [write.table]: write.id,
    });
  }
  return null;
}

interface Reference {
  table: string;
  column: string;
  to: string;
}

/** The schema stays as it is while a connection is open. */
const known = new WeakMap<Kysely<Tables>, readonly Reference[]>();

async function references(db: Kysely<Tables>): Promise<readonly Reference[]> {
  const before = known.get(db);
  if (before !== undefined) return before;
  const { rows } = await sql<Reference>`
    SELECT m.name AS "table", f."from" AS "column", f."table" AS "to"
    FROM sqlite_schema m JOIN pragma_foreign_key_list(m.name) f
    WHERE m.type = 'table'`.execute(db);
  known.set(db, rows);
  return rows;
}

/** Refusal where a row that would go is referred to by one that would stay. */
export async function stillNeeded(
  db: Kysely<Tables>,
  going: readonly RowWrite[],
): Promise<ShopError | null> {
  const goes = new Set(going.map((write) => `${write.table} ${write.id}`));
  const all = going.length === 0 ? [] : await references(db);
  for (const write of going) {
    for (const { table, column } of all.filter(({ to }) => to === write.table)) {
      const { rows } = await sql<{ id: string }>`
        SELECT id FROM ${sql.table(table)} WHERE ${sql.ref(column)} = ${write.id}`.execute(db);
      if (rows.every((row) => goes.has(`${table} ${row.id}`))) continue;
      return new ShopError(
        'CONFLICT',
        `The ${nounOf(write.table)} is used now by what was recorded since: ${nounOf(table)}.`,
        { [write.table]: write.id, usedBy: table },
      );
    }
  }
  return null;
}
