import type { Migration } from '../../migrations/migration.ts';
import type {
  BusyPhase,
  NeedsYou,
  StartUpChoice,
  StartUpReason,
  StartUpState,
} from '../../shared/start-up.ts';
import { backUpBeforeUpgrade, clearUnfinished, listBackups } from './backup.ts';
import { checkDatabase, refuseLostFile } from './check.ts';
import { type DataFolder, folderAt, furnish, locate } from './data-folder.ts';
import { type Lock, takeLock } from './lock.ts';
import { logRefusal } from './log.ts';
import { migrate, newestVersion, pendingSteps, refuseNewerFile } from './migrate.ts';
import { inspect, openReader, openWriter, type ShopDatabase, schemaVersionOf } from './open.ts';
import { StartUpRefusal } from './start-up-refusal.ts';

export interface StartUpOptions {
  dataFolder: string;
  migrations: readonly Migration[];
  /** Instant, ISO-8601 UTC; names the backup before an upgrade and dates the log line. */
  now: () => string;
  onState: (state: StartUpState) => void;
}

export interface ReadyShop {
  phase: 'ready';
  folder: DataFolder;
  database: ShopDatabase;
  schemaVersion: number;
  isNew: boolean;
  close(): void;
}

const choicesFor: Record<StartUpReason, readonly StartUpChoice[]> = {
  'wrong-folder': ['choose-folder', 'try-again'],
  'not-our-file': ['choose-folder', 'try-again'],
  'not-writable': ['try-again', 'choose-folder'],
  locked: ['try-again', 'choose-folder'],
  'newer-file': ['try-again', 'choose-folder'],
  corrupt: ['restore-backup', 'choose-folder', 'try-again'],
  'failed-migration': ['try-again', 'restore-backup'],
  'disk-full': ['try-again'],
};

/** What has been opened so far; closed in reverse when start-up ends early. */
class Held {
  readonly #closers: (() => void)[] = [];

  keep<T>(thing: T, close: (thing: T) => void): T {
    this.#closers.push(() => close(thing));
    return thing;
  }

  get any(): boolean {
    return this.#closers.length > 0;
  }

  release(): void {
    for (const close of this.#closers.splice(0).reverse()) close();
  }
}

/** Opens the shop file for writing once it is known to be there, ours and not too new. */
function openOwnFile(folder: DataFolder, migrations: readonly Migration[]) {
  refuseLostFile(folder.database, listBackups(folder.root).length > 0);
  refuseNewerFile(inspect(folder.database), migrations);
  furnish(folder);
  clearUnfinished(folder.root);
  return openWriter(folder.database);
}

async function open(options: StartUpOptions, held: Held): Promise<ReadyShop> {
  const step = async (phase: BusyPhase) => {
    options.onState({ phase });
    // Lets the doors answer between two steps that each hold the thread.
    await new Promise((resolve) => setImmediate(resolve));
  };
  await step('locating');
  const folder = locate(options.dataFolder);
  await step('locking');
  held.keep(takeLock(folder.lock), (lock: Lock) => lock.release());
  await step('opening');
  const writer = held.keep(openOwnFile(folder, options.migrations), (db) => db.close());
  await step('checking');
  checkDatabase(writer);
  const isNew = schemaVersionOf(writer) === 0;
  const pending = pendingSteps(writer, options.migrations);
  if (pending.length > 0) {
    if (!isNew) {
      await step('backing-up');
      backUpBeforeUpgrade(writer, folder.root, options.now());
    }
    await step('migrating');
    migrate(writer, pending);
  }
  const reader = held.keep(openReader(folder.database), (db) => db.close());
  return {
    phase: 'ready',
    folder,
    database: { writer, reader, close: () => held.release() },
    schemaVersion: newestVersion(options.migrations),
    isNew,
    close: () => held.release(),
  };
}

function backupNames(dataFolder: string): string[] {
  try {
    return listBackups(dataFolder).map((backup) => backup.name);
  } catch {
    return [];
  }
}

function needsYou(refusal: StartUpRefusal, dataFolder: string): NeedsYou {
  const backups = backupNames(dataFolder).slice(0, 1000);
  const choices = choicesFor[refusal.reason].filter(
    (choice) => choice !== 'restore-backup' || backups.length > 0,
  );
  const { reason, message: sentence } = refusal;
  return { phase: 'needs-you', reason, sentence, choices, backups };
}

/**
 * Opens a shop step by step, telling each phase. Ends ready, or waiting for a person with
 * everything released again; it never throws. The cause of a refusal goes to the shop's log.
 */
export async function startUp(options: StartUpOptions): Promise<ReadyShop | NeedsYou> {
  const held = new Held();
  try {
    const ready = await open(options, held);
    options.onState({ phase: 'ready', schemaVersion: ready.schemaVersion });
    return ready;
  } catch (error) {
    const refusal = StartUpRefusal.from(
      error,
      'not-writable',
      'The data folder could not be opened. Check the disk, then try again.',
    );
    // Without the lock the folder is not ours, or another program is writing this log.
    if (held.any) logRefusal(folderAt(options.dataFolder).logs, options.now(), refusal);
    held.release();
    const state = needsYou(refusal, options.dataFolder);
    options.onState(state);
    return state;
  }
}
