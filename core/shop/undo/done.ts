import { type Kysely, sql } from 'kysely';
import type { RecordTable } from '../../storage/commands.ts';
import type { OrderHistoryRow, Tables } from '../../storage/tables.ts';

export type StoredRow = Readonly<Record<string, string | number | null>>;

/** What one command made of one row, from the first of its writes to the last. */
export interface RowWrite {
  table: RecordTable;
  id: string;
  /** Null where the command added the row. */
  before: StoredRow | null;
  after: StoredRow | null;
  /** Row version that the command left behind. */
  version: number;
}

/** A command as it was recorded, with what it wrote. */
export interface Done {
  id: string;
  /** Grows with every command carried out: the clock may stand still or be put back. */
  place: number;
  name: string;
  at: string;
  personId: string;
  personName: string;
  orderId: string | null;
  bowId: string | null;
  customerId: string | null;
  undone: { at: string; personName: string } | null;
  /** Place of the command that this one took back. */
  undoesPlace: number | null;
  writes: readonly RowWrite[];
  /** Lines of the history it wrote, in order. */
  lines: readonly OrderHistoryRow[];
}

/** What was told, said or printed stays as it was written. */
export const keptTables: readonly RecordTable[] = [
  'order_history',
  'consent',
  'consent_answer',
  'paper',
];

/** The same to the last column, whatever the row versions. */
export function sameRow(a: StoredRow | null, b: StoredRow | null): boolean {
  if (a === null || b === null) return a === b;
  const columns = new Set([...Object.keys(a), ...Object.keys(b)]);
  columns.delete('row_version');
  return [...columns].every((column) => a[column] === b[column]);
}

/** A write that only raised the row version, so that older views are told. */
export function isTouch(write: RowWrite): boolean {
  return write.before !== null && sameRow(write.before, write.after);
}

/** Whether the command changed any of these columns of a row that was there before. */
export function changes(write: RowWrite, ...columns: string[]): boolean {
  const { before, after } = write;
  return before !== null && columns.some((column) => before[column] !== after?.[column]);
}

interface Change {
  table_name: string;
  row_id: string;
  before_json: string | null;
  after_json: string | null;
  row_version: number;
}

const rowOf = (json: string | null) => (json === null ? null : (JSON.parse(json) as StoredRow));

function writesOf(changes: readonly Change[]): RowWrite[] {
  const writes = new Map<string, RowWrite>();
  for (const change of changes) {
    const key = `${change.table_name} ${change.row_id}`;
    const first = writes.get(key);
    writes.set(key, {
      table: change.table_name as RecordTable,
      id: change.row_id,
      before: first === undefined ? rowOf(change.before_json) : first.before,
      after: rowOf(change.after_json),
      version: change.row_version,
    });
  }
  return [...writes.values()];
}

function commands(db: Kysely<Tables>) {
  return db
    .selectFrom('command')
    .leftJoin('person', 'person.id', 'command.person_id')
    .leftJoin('command as undoing', 'undoing.undoes_id', 'command.id')
    .leftJoin('person as undoer', 'undoer.id', 'undoing.person_id')
    .leftJoin('command as target', 'target.id', 'command.undoes_id')
    .select(['command.id', 'command.name', 'command.at', 'command.person_id'])
    .select(['command.order_id', 'command.bow_id', 'command.customer_id'])
    .select(['person.name as person_name', 'undoing.at as undone_at', 'undoer.name as undoer_name'])
    .select(sql<number>`command.rowid`.as('place'))
    .select(sql<number | null>`target.rowid`.as('undoes_place'));
}

export type CommandQuery = ReturnType<typeof commands>;

/**
 * Commands that the condition picks, in the order it asks for, with everything they wrote, or with
 * what they wrote in the given tables.
 */
export async function doneWhere(
  db: Kysely<Tables>,
  condition: (query: CommandQuery) => CommandQuery,
  tables?: readonly RecordTable[],
): Promise<Done[]> {
  const rows = await condition(commands(db)).execute();
  if (rows.length === 0) return [];
  const ids = rows.map((row) => row.id);
  const changes = await db
    .selectFrom('command_change')
    .selectAll()
    .where('command_id', 'in', ids)
    .$if(tables !== undefined, (query) => query.where('table_name', 'in', tables ?? []))
    .orderBy('command_id')
    .orderBy('seq')
    .execute();
  const byCommand = Map.groupBy(changes, (change) => change.command_id);
  return rows.map((row) => {
    const writes = writesOf(byCommand.get(row.id) ?? []);
    const told = writes.filter((write) => write.table === 'order_history');
    return {
      id: row.id,
      place: row.place,
      name: row.name,
      at: row.at,
      personId: row.person_id,
      personName: row.person_name ?? 'Somebody',
      orderId: row.order_id,
      bowId: row.bow_id,
      customerId: row.customer_id,
      undone:
        row.undone_at === null
          ? null
          : { at: row.undone_at, personName: row.undoer_name ?? 'Somebody' },
      undoesPlace: row.undoes_place,
      writes: writes.filter((write) => write.table !== 'order_history'),
      lines: told.map((write) => write.after as unknown as OrderHistoryRow),
    };
  });
}

export async function readDone(db: Kysely<Tables>, id: string): Promise<Done | null> {
  const [done] = await doneWhere(db, (query) => query.where('command.id', '=', id));
  return done ?? null;
}
