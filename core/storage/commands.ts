import type { Insertable, Transaction } from 'kysely';
import { ShopError } from '../../shared/errors.ts';
import type { ShopContext } from './context.ts';
import type { RecordTables, Tables } from './tables.ts';

export type RecordTable = keyof RecordTables & string;
type NewRow<T extends RecordTable> = Omit<RecordTables[T], 'row_version'>;
export type Patch<T extends RecordTable> = Partial<Omit<RecordTables[T], 'id' | 'row_version'>>;

/** What the command is about, so that history and undo find it. */
export interface About {
  orderId?: string | null;
  bowId?: string | null;
  customerId?: string | null;
}

/** The only hands that write records. Each write is kept with the row before and after. */
export interface CommandTransaction {
  db: Transaction<Tables>;
  /** Instant of the command; every row it writes carries the same. */
  at: string;
  insert<T extends RecordTable>(table: T, row: NewRow<T>): Promise<RecordTables[T]>;
  /**
   * @param expected row version the caller saw, or null where the caller just read the row here.
   * @throws ShopError NOT_FOUND, or STALE when somebody changed the row in the meantime.
   */
  update<T extends RecordTable>(
    table: T,
    id: string,
    expected: number | null,
    patch: Patch<T>,
  ): Promise<RecordTables[T]>;
  /**
   * Takes a row out. Only undo uses it, for a row that the undone command added.
   * @param expected as for {@link CommandTransaction.update}.
   * @throws ShopError NOT_FOUND or STALE; a foreign-key error where another row refers to it.
   */
  remove<T extends RecordTable>(table: T, id: string, expected: number | null): Promise<void>;
  about(about: About): void;
}

interface RecordedChange {
  table: RecordTable;
  id: string;
  before: unknown;
  after: unknown;
  version: number;
}

// Kysely cannot follow a table name that is itself generic; the row types above stay exact.
// biome-ignore lint/suspicious/noExplicitAny: the one place where a generic table name meets Kysely.
type LooseDb = Transaction<any>;

async function readRow<T extends RecordTable>(
  db: Transaction<Tables>,
  table: T,
  id: string,
): Promise<RecordTables[T]> {
  const row = await (db as LooseDb)
    .selectFrom(table as string)
    .selectAll()
    .where('id', '=', id)
    .executeTakeFirst();
  if (row === undefined) {
    throw new ShopError('NOT_FOUND', 'This record does not exist any more.', { [table]: id });
  }
  return row as RecordTables[T];
}

function refuseStale(table: RecordTable, id: string, version: number, expected: number | null) {
  if (expected === null || version === expected) return;
  throw new ShopError('STALE', 'Somebody changed this in the meantime. Look again, then repeat.', {
    [table]: id,
  });
}

class Recorder implements CommandTransaction {
  readonly db: Transaction<Tables>;
  readonly at: string;
  readonly changes: RecordedChange[] = [];
  subject: About = {};

  constructor(db: Transaction<Tables>, at: string) {
    this.db = db;
    this.at = at;
  }

  about(about: About): void {
    this.subject = { ...this.subject, ...about };
  }

  async insert<T extends RecordTable>(table: T, row: NewRow<T>): Promise<RecordTables[T]> {
    const full = { ...row, row_version: 1 };
    await (this.db as LooseDb)
      .insertInto(table as string)
      .values(full)
      .execute();
    this.changes.push({ table, id: row.id, before: null, after: full, version: 1 });
    return full as unknown as RecordTables[T];
  }

  async update<T extends RecordTable>(
    table: T,
    id: string,
    expected: number | null,
    patch: Patch<T>,
  ): Promise<RecordTables[T]> {
    const before = await readRow(this.db, table, id);
    refuseStale(table, id, before.row_version, expected);
    const version = before.row_version + 1;
    const after = { ...before, ...patch, row_version: version };
    await (this.db as LooseDb)
      .updateTable(table as string)
      .set({ ...patch, row_version: version } as Record<string, unknown>)
      .where('id', '=', id)
      .execute();
    this.changes.push({ table, id, before, after, version });
    return after;
  }

  async remove<T extends RecordTable>(
    table: T,
    id: string,
    expected: number | null,
  ): Promise<void> {
    const before = await readRow(this.db, table, id);
    refuseStale(table, id, before.row_version, expected);
    await (this.db as LooseDb)
      .deleteFrom(table as string)
      .where('id', '=', id)
      .execute();
    this.changes.push({ table, id, before, after: null, version: before.row_version + 1 });
  }
}

/** The command to run. `undoes` names the one it takes back; each can be taken back once. */
interface NamedCommand {
  id: string;
  name: string;
  undoes?: string;
}

async function storedResult(
  db: Transaction<Tables>,
  commandId: string,
  name: string,
): Promise<{ result: unknown } | null> {
  const stored = await db
    .selectFrom('command')
    .select(['name', 'result_json'])
    .where('id', '=', commandId)
    .executeTakeFirst();
  if (stored === undefined) return null;
  if (stored.name !== name) {
    throw new ShopError('CONFLICT', 'This command id was already used for something else.', {
      commandId,
    });
  }
  return { result: JSON.parse(stored.result_json) };
}

async function keepRecord(
  recorder: Recorder,
  ctx: ShopContext,
  command: NamedCommand,
  result: unknown,
): Promise<void> {
  const { orderId = null, bowId = null, customerId = null } = recorder.subject;
  await recorder.db
    .insertInto('command')
    .values({
      id: command.id,
      name: command.name,
      person_id: ctx.actor.personId,
      device: ctx.actor.device,
      at: recorder.at,
      order_id: orderId,
      bow_id: bowId,
      customer_id: customerId,
      result_json: JSON.stringify(result),
      undoes_id: command.undoes ?? null,
    })
    .execute();
  const rows: Insertable<Tables['command_change']>[] = recorder.changes.map((change, seq) => ({
    command_id: command.id,
    seq,
    table_name: change.table,
    row_id: change.id,
    before_json: change.before === null ? null : JSON.stringify(change.before),
    after_json: change.after === null ? null : JSON.stringify(change.after),
    row_version: change.version,
  }));
  // SQLite binds at most 32,766 values a statement.
  for (let from = 0; from < rows.length; from += 1000) {
    await recorder.db
      .insertInto('command_change')
      .values(rows.slice(from, from + 1000))
      .execute();
  }
}

/**
 * Runs one command: its writes, its record and its row changes commit together or not at all.
 * A repeat of the same `commandId` returns the stored result and writes nothing, so a client
 * that lost the answer may simply ask again. Results must survive JSON.
 */
export async function runCommand<Result>(
  ctx: ShopContext,
  command: NamedCommand,
  work: (trx: CommandTransaction) => Promise<Result>,
): Promise<Result> {
  const outcome = await ctx.write.transaction().execute(async (db) => {
    const stored = await storedResult(db, command.id, command.name);
    if (stored !== null) return { result: stored.result as Result, recorder: null };
    const recorder = new Recorder(db, ctx.now());
    const result = await work(recorder);
    await keepRecord(recorder, ctx, command, result);
    return { result, recorder };
  });
  const { recorder } = outcome;
  if (recorder !== null) {
    const tables = [...new Set(recorder.changes.map((change) => change.table))];
    ctx.log.info({ command: command.name, commandId: command.id, tables }, 'command');
    ctx.publish({
      commandId: command.id,
      name: command.name,
      orderId: recorder.subject.orderId ?? null,
      tables,
    });
  }
  return outcome.result;
}
