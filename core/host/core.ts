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
import { demoFolderOf, fillDemo, ownFolderOf, prepareDemoFolder } from './demo.ts';
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
  /** The shop's own folder while the demo shop is open or being filled. */
  #ownFolder: string | null = null;
  #demoTrouble: string | null = null;
  #givingUp = new AbortController();
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
      demoTrouble: this.#demoTrouble,
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

  /** @see contract.system.openDemo */
  async openDemo(): Promise<SystemStatus> {
    await this.#starting;
    const isFree = this.#state.phase === 'needs-you' || (await this.status()).isNew;
    if (!isFree || this.#ownFolder !== null) {
      throw new ShopError('CONFLICT', 'A shop is open here: the demo is for a first look.');
    }
    this.#ownFolder = this.#dataFolder;
    this.#dataFolder = demoFolderOf(this.#dataFolder);
    this.#starting = this.#switch(() => this.#startDemo());
    return this.status();
  }

  /** @see contract.system.leaveDemo */
  async leaveDemo(): Promise<SystemStatus> {
    const own = this.#ownFolder ?? ownFolderOf(this.#dataFolder);
    if (own === null) throw new ShopError('CONFLICT', 'This is not the demo shop.');
    this.#givingUp.abort();
    await this.#starting;
    await this.#backTo(own);
    return this.status();
  }

  async #backTo(folder: string): Promise<void> {
    if (this.#dataFolder === folder) return;
    this.#dataFolder = folder;
    this.#ownFolder = null;
    this.#starting = this.#switch(() => this.#start());
    await this.#starting;
  }

  /** Leaves one folder for another, and tells every open screen. */
  async #switch(start: () => Promise<void>): Promise<void> {
    this.#state = { phase: 'locating' };
    this.#demoTrouble = null;
    await this.#closeShop();
    await start();
    const commandId = this.#newId();
    const change = { commandId, name: 'system.openFolder', orderId: null, tables: [] };
    this.changes.publish('change', change);
  }

  /** Whatever goes wrong with the demo leads back to the shop's own folder. */
  async #startDemo(): Promise<void> {
    this.#givingUp = new AbortController();
    const { signal } = this.#givingUp;
    try {
      const { mustFill } = prepareDemoFolder(this.#dataFolder, this.#now());
      await this.#start(async (shop) => {
        const root = this.#dataFolder;
        if (mustFill) await fillDemo(shop, { root, signal, onState: this.#setState });
      });
      if (this.#state.phase === 'needs-you') throw new ShopError('STORAGE', this.#state.sentence);
    } catch (error) {
      this.#log.log.error({ err: error }, 'demo');
      await this.#closeShop();
      this.#dataFolder = this.#ownFolder ?? this.#dataFolder;
      this.#ownFolder = null;
      if (!signal.aborted) this.#demoTrouble = demoTroubleOf(error);
      await this.#start();
    }
  }

  async close(): Promise<void> {
    this.#givingUp.abort();
    await this.#starting;
    await this.#closeShop();
  }

  async #closeShop(): Promise<void> {
    await this.#sweeping;
    await this.#shop?.read.destroy();
    await this.#shop?.write.destroy();
    this.#shop = null;
    this.#ready?.close();
    this.#ready = null;
    await this.#log.close();
    this.#log = silentLog();
  }

  readonly #setState = (state: StartUpState): void => {
    this.#state = state;
  };

  /** @param fill what is written before anybody may come in. */
  async #start(fill: (shop: OpenShop) => Promise<void> = async () => {}): Promise<void> {
    // Ready is told last: until then nobody is let in.
    let ready: StartUpState | null = null;
    const result = await startUp({
      dataFolder: this.#dataFolder,
      migrations,
      now: this.#now,
      onState: (state) => {
        if (state.phase === 'ready') ready = state;
        else this.#state = state;
      },
    });
    if (result.phase !== 'ready') return;
    this.#log = createLog(result.folder.logs);
    this.#ready = result;
    const shop = this.#openShop(result);
    this.#filling = shop;
    await fill(shop);
    this.#shop = shop;
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
