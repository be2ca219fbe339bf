import { EventPublisher } from '@orpc/server';
import { v7 as uuidv7 } from 'uuid';
import type { Change, SystemStatus } from '../../shared/contract/system.ts';
import { ShopError } from '../../shared/errors.ts';
import type { StartUpChoice, StartUpState } from '../../shared/start-up.ts';
import { hasPeople } from '../shop/setup/people.ts';
import { restoreBackup } from '../storage/backup.ts';
import type { OpenShop } from '../storage/context.ts';
import { type ShopLog, silentLog } from '../storage/log.ts';
import type { ReadyShop } from '../storage/start-up.ts';
import { demoFolderOf, demoTroubleOf, fillDemo, ownFolderOf, prepareDemoFolder } from './demo.ts';
import { type Opened, openFolder } from './opened.ts';
import { version } from './version.ts';

export interface CoreOptions {
  dataFolder: string;
  /** Instant, ISO-8601 UTC. The system clock unless a test gives its own. */
  now?: () => string;
  newId?: () => string;
}

const quiet = silentLog().log;

/** The one process that owns the data folder. Doors ask it; nobody else opens the database. */
export class Core {
  readonly changes = new EventPublisher<{ change: Change }>();
  #dataFolder: string;
  readonly #now: () => string;
  readonly #newId: () => string;
  #state: StartUpState = { phase: 'locating' };
  #opened: Opened | null = null;
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

  #open(): Opened {
    if (this.#opened === null) throw new ShopError('NOT_READY', 'The shop is not open yet.');
    return this.#opened;
  }

  /** @throws ShopError NOT_READY while the shop is not open. */
  shop(): OpenShop {
    return this.#open().shop;
  }

  /** The open data folder. @throws ShopError NOT_READY while the shop is not open. */
  ready(): ReadyShop {
    return this.#open().ready;
  }

  get log(): ShopLog['log'] {
    return this.#opened?.log ?? quiet;
  }

  get dataFolder(): string {
    return this.#dataFolder;
  }

  now(): string {
    return this.#now();
  }

  async status(): Promise<SystemStatus> {
    const opened = this.#opened;
    return {
      version,
      startUp: this.#state,
      dataFolder: this.#dataFolder.replaceAll(/\p{Cc}/gu, ' ').slice(0, 1000),
      isNew: opened !== null && !(await hasPeople(opened.shop)),
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
      throw new ShopError('CONFLICT', 'A shop is open here already.', {
        demo: 'Start Tillermark with an empty data folder to look at the demo shop.',
      });
    }
    this.#ownFolder = this.#dataFolder;
    this.#givingUp = new AbortController();
    this.#starting = this.#switchTo(demoFolderOf(this.#dataFolder), () => this.#startDemo());
    return this.status();
  }

  /** @see contract.system.leaveDemo */
  async leaveDemo(): Promise<SystemStatus> {
    const own = this.#ownFolder ?? ownFolderOf(this.#dataFolder);
    if (own === null) throw new ShopError('CONFLICT', 'This is not the demo shop.');
    this.#givingUp.abort();
    await this.#starting;
    // A filling that was given up has gone back by itself.
    if (this.#dataFolder !== own) {
      this.#ownFolder = null;
      this.#starting = this.#switchTo(own, () => this.#start());
      await this.#starting;
    }
    return this.status();
  }

  async close(): Promise<void> {
    this.#givingUp.abort();
    await this.#starting;
    await this.#closeFolder();
  }

  async #closeFolder(): Promise<void> {
    const opened = this.#opened;
    this.#opened = null;
    await opened?.close();
  }

  /** Leaves one folder for another, and has every open screen read again. */
  async #switchTo(folder: string, start: () => Promise<void>): Promise<void> {
    this.#state = { phase: 'locating' };
    this.#demoTrouble = null;
    this.#dataFolder = folder;
    await this.#closeFolder();
    await start();
    const commandId = this.#newId();
    const change = { commandId, name: 'system.openFolder', orderId: null, tables: [] };
    this.changes.publish('change', change);
  }

  /** Whatever goes wrong with the demo leads back to the shop's own folder. */
  async #startDemo(): Promise<void> {
    const root = this.#dataFolder;
    const { signal } = this.#givingUp;
    try {
      const { mustFill } = prepareDemoFolder(root, this.#now());
      const fill = (shop: OpenShop) => fillDemo(shop, { root, signal, onState: this.#setState });
      await (mustFill ? this.#start(fill) : this.#start());
      if (this.#state.phase === 'needs-you') throw new ShopError('STORAGE', this.#state.sentence);
    } catch (error) {
      if (!signal.aborted) this.#demoTrouble = demoTroubleOf(error);
      this.#dataFolder = this.#ownFolder ?? root;
      this.#ownFolder = null;
      await this.#start();
    }
  }

  readonly #setState = (state: StartUpState): void => {
    this.#state = state;
  };

  async #start(fill?: (shop: OpenShop) => Promise<void>): Promise<void> {
    const opened = await openFolder({
      dataFolder: this.#dataFolder,
      now: this.#now,
      newId: this.#newId,
      publish: (change) => this.changes.publish('change', change),
      onState: this.#setState,
      ...(fill === undefined ? {} : { fill }),
    });
    if (opened === null) return;
    this.#opened = opened;
    this.#state = { phase: 'ready', schemaVersion: opened.ready.schemaVersion };
  }
}

/** Starts the core; start-up goes on while the doors already answer with its state. */
export async function startCore(options: CoreOptions): Promise<Core> {
  return new Core(options);
}
