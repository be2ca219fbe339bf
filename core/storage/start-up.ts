import type { Migration } from '../../migrations/migration.ts';
import type {
  NeedsYou,
  StartUpChoice,
  StartUpReason,
  StartUpState,
} from '../../shared/start-up.ts';
import { backUpBeforeUpgrade, listBackups } from './backup.ts';
import { checkDatabase } from './check.ts';
import { type DataFolder, locate } from './data-folder.ts';
import { type Lock, takeLock } from './lock.ts';
import { migrate, newestVersion, pendingSteps, refuseNewerFile } from './migrate.ts';
import { openReader, openWriter, type ShopDatabase, schemaVersionOf } from './open.ts';
import { StartUpRefusal } from './start-up-refusal.ts';

export interface StartUpOptions {
  dataFolder: string;
  migrations: readonly Migration[];
  /** Instant, ISO-8601 UTC; names the backup before an upgrade. */
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
  'not-our-file': ['choose-folder'],
  'not-writable': ['try-again', 'choose-folder'],
  locked: ['try-again', 'choose-folder'],
  'newer-file': ['try-again', 'choose-folder'],
  corrupt: ['restore-backup', 'choose-folder'],
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

  release(): void {
    for (const close of this.#closers.splice(0).reverse()) close();
  }
}

async function open(options: StartUpOptions, held: Held): Promise<ReadyShop> {
  const step = async (phase: Exclude<StartUpState['phase'], 'ready' | 'needs-you'>) => {
    options.onState({ phase });
    // Lets the doors answer between two steps that each hold the thread.
    await new Promise((resolve) => setImmediate(resolve));
  };
  await step('locating');
  const folder = locate(options.dataFolder);
  await step('locking');
  held.keep(takeLock(folder.lock), (lock: Lock) => lock.release());
  await step('opening');
  const writer = held.keep(openWriter(folder.database), (db) => db.close());
  await step('checking');
  refuseNewerFile(writer, options.migrations);
  checkDatabase(writer);
  const isNew = schemaVersionOf(writer) === 0;
  const pending = pendingSteps(writer, options.migrations);
  if (pending.length > 0 && !isNew) {
    await step('backing-up');
    backUpBeforeUpgrade(writer, folder.root, options.now());
  }
  await step('migrating');
  migrate(writer, pending);
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

function needsYou(error: unknown, dataFolder: string): NeedsYou {
  const refusal = StartUpRefusal.from(
    error,
    'not-writable',
    'The data folder could not be opened. Check the disk, then try again.',
  );
  return {
    phase: 'needs-you',
    reason: refusal.reason,
    sentence: refusal.message,
    choices: [...choicesFor[refusal.reason]],
    backups: backupNames(dataFolder),
  };
}

/**
 * Opens a shop step by step, telling each phase. Ends ready, or waiting for a person with
 * everything released again; it never throws.
 */
export async function startUp(options: StartUpOptions): Promise<ReadyShop | NeedsYou> {
  const held = new Held();
  try {
    const ready = await open(options, held);
    options.onState({ phase: 'ready', schemaVersion: ready.schemaVersion });
    return ready;
  } catch (error) {
    held.release();
    const state = needsYou(error, options.dataFolder);
    options.onState(state);
    return state;
  }
}
