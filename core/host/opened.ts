import { migrations } from '../../migrations/index.ts';
import type { Change } from '../../shared/contract/system.ts';
import type { StartUpState } from '../../shared/start-up.ts';
import { sweepAttachments } from '../shop/attachments/sweep.ts';
import { AttachmentStore } from '../storage/attachments/store.ts';
import type { OpenShop } from '../storage/context.ts';
import { kyselyLog, makeKysely } from '../storage/kysely.ts';
import { createLog, type ShopLog } from '../storage/log.ts';
import { type ReadyShop, startUp } from '../storage/start-up.ts';

/** A data folder that is open, with everything that has to be closed again. */
export interface Opened {
  ready: ReadyShop;
  shop: OpenShop;
  log: ShopLog['log'];
  close(): Promise<void>;
}

export interface OpenFolderOptions {
  dataFolder: string;
  now: () => string;
  newId: () => string;
  publish: (change: Change) => void;
  onState: (state: StartUpState) => void;
  /** What is written before anybody may come in. Where it throws, the folder is closed again. */
  fill?: (shop: OpenShop) => Promise<void>;
}

function shopOf(ready: ReadyShop, log: ShopLog['log'], options: OpenFolderOptions): OpenShop {
  return {
    read: makeKysely(ready.database.reader, kyselyLog(log)),
    write: makeKysely(ready.database.writer, kyselyLog(log)),
    now: options.now,
    newId: options.newId,
    attachments: new AttachmentStore(ready.folder.attachments, options.now),
    log,
    publish: options.publish,
  };
}

/** Opens a data folder, or answers null where start-up now waits for a person. */
export async function openFolder(options: OpenFolderOptions): Promise<Opened | null> {
  // Ready is left to the caller: until everything is there, nobody comes in.
  const early = (state: StartUpState) => {
    if (state.phase !== 'ready') options.onState(state);
  };
  const { dataFolder, now } = options;
  const ready = await startUp({ dataFolder, migrations, now, onState: early });
  if (ready.phase !== 'ready') return null;
  const { log, close: closeLog } = createLog(ready.folder.logs);
  const shop = shopOf(ready, log, options);
  let sweeping: Promise<void> = Promise.resolve();
  const close = async () => {
    await sweeping;
    await shop.read.destroy();
    await shop.write.destroy();
    ready.close();
    await closeLog();
  };
  try {
    await options.fill?.(shop);
  } catch (error) {
    log.error({ err: error }, 'filling given up');
    await close();
    throw error;
  }
  sweeping = sweepAttachments(shop);
  log.info({ schemaVersion: ready.schemaVersion, isNew: ready.isNew }, 'open');
  return { ready, shop, log, close };
}
