import { EventPublisher } from '@orpc/server';
import { v7 as uuidv7 } from 'uuid';
import { migrations } from '../../migrations/index.ts';
import type { Change, SystemStatus } from '../../shared/contract/system.ts';
import { ShopError } from '../../shared/errors.ts';
import type { StartUpChoice, StartUpState } from '../../shared/start-up.ts';
import { sweepAttachments } from '../shop/attachments/sweep.ts';
import { hasPeople } from '../shop/setup/people.ts';
import { AttachmentStore } from '../storage/attachments/store.ts';
import { restoreBackup } from '../storage/backup.ts';
import type { OpenShop } from '../storage/context.ts';
import { kyselyLog, makeKysely } from '../storage/kysely.ts';
import { createLog, type ShopLog, silentLog } from '../storage/log.ts';
import { type ReadyShop, startUp } from '../storage/start-up.ts';
import { version } from './version.ts';

export interface CoreOptions {
  dataFolder: string;
  /** Instant, ISO-8601 UTC. The system clock unless a test gives its own. */
  now?: () => string;
  newId?: () => string;
}

/** The one process that owns the data folder. Doors ask it; nobody else opens the database. */
export class Core {
  readonly changes = new EventPublisher<{ change: Change }>();
  #dataFolder: string;
  readonly #now: () => string;
  readonly #newId: () => string;
  #state: StartUpState = { phase: 'locating' };
  #ready: ReadyShop | null = null;
  #shop: OpenShop | null = null;
  #log: ShopLog = silentLog();
  #sweeping: Promise<void> = Promise.resolve();
  #starting: Promise<void>;

  constructor(options: CoreOptions) {
    this.#dataFolder = options.dataFolder;
    this.#now = options.now ?? (() => new Date().toISOString());
    this.#newId = options.newId ?? (() => uuidv7());
    this.#starting = this.#start();
  }

  /** Resolves when start-up has come to rest: ready, or waiting for a person. */
  async settled(): Promise<StartUpState> {
    await this.#starting;
    return this.#state;
  }

  /** @throws ShopError NOT_READY while the shop is not open. */
  shop(): OpenShop {
    if (this.#shop === null) throw new ShopError('NOT_READY', 'The shop is not open yet.');
    return this.#shop;
  }

  /** The open data folder. @throws ShopError NOT_READY while the shop is not open. */
  ready(): ReadyShop {
    if (this.#ready === null) throw new ShopError('NOT_READY', 'The shop is not open yet.');
    return this.#ready;
  }

  get log(): ShopLog['log'] {
    return this.#log.log;
  }

  get dataFolder(): string {
    return this.#dataFolder;
  }

  now(): string {
    return this.#now();
  }

  async status(): Promise<SystemStatus> {
    return {
      version,
      startUp: this.#state,
      dataFolder: this.#dataFolder.replaceAll(/\p{Cc}/gu, ' ').slice(0, 1000),
      isNew: this.#shop !== null && !(await hasPeople(this.#shop)),
    };
  }

  /** Answers what a start-up screen asked and starts again. */
  async resolve(choice: StartUpChoice, argument: string | undefined): Promise<SystemStatus> {
    await this.#starting;
    if (this.#state.phase !== 'needs-you') {
      throw new ShopError('CONFLICT', 'The shop is open: there is nothing to decide.');
    }
    if (!this.#state.choices.includes(choice)) {
      throw new ShopError('CONFLICT', 'This cannot be chosen here.', {
        choice: `Choose one of: ${this.#state.choices.join(', ')}.`,
      });
    }
    const name = argument?.trim() ?? '';
    if (choice === 'choose-folder') {
      if (name === '')
        throw new ShopError('BAD_INPUT', 'Name the folder.', { argument: 'Name the folder.' });
      this.#dataFolder = name;
    }
    if (choice === 'restore-backup') await restoreBackup(this.#dataFolder, name, this.#now());
    this.#starting = this.#start();
    await this.#starting;
    return this.status();
  }

  async close(): Promise<void> {
    await this.#starting;
    await this.#sweeping;
    await this.#shop?.read.destroy();
    await this.#shop?.write.destroy();
    this.#shop = null;
    this.#ready?.close();
    this.#ready = null;
    await this.#log.close();
  }

  async #start(): Promise<void> {
    const result = await startUp({
      dataFolder: this.#dataFolder,
      migrations,
      now: this.#now,
      onState: (state) => {
        this.#state = state;
      },
    });
    if (result.phase !== 'ready') return;
    this.#log = createLog(result.folder.logs);
    this.#ready = result;
    this.#shop = this.#openShop(result);
    this.#sweeping = sweepAttachments(this.#shop);
    this.#log.log.info({ schemaVersion: result.schemaVersion, isNew: result.isNew }, 'open');
  }

  #openShop(ready: ReadyShop): OpenShop {
    const log = this.#log.log;
    return {
      read: makeKysely(ready.database.reader, kyselyLog(log)),
      write: makeKysely(ready.database.writer, kyselyLog(log)),
      now: this.#now,
      newId: this.#newId,
      attachments: new AttachmentStore(ready.folder.attachments, this.#now),
      log,
      publish: (change) => this.changes.publish('change', change),
    };
  }
}

/** Starts the core; start-up goes on while the doors already answer with its state. */
export async function startCore(options: CoreOptions): Promise<Core> {
  return new Core(options);
}
