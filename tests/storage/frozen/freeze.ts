import { copyFileSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { newestVersion } from '../../../core/storage/migrate.ts';
import { migrations } from '../../../migrations/index.ts';
import { fillShop } from './fill-shop.ts';

/**
 * Freezes a small shop of the present schema, before a new migration is written:
 * `npm exec -c 'node tests/storage/frozen/freeze.ts'`. A frozen file is never made anew.
 */
const folder = mkdtempSync(join(tmpdir(), 'tillermark-freeze-'));
const here = fileURLToPath(new URL('.', import.meta.url));
const version = newestVersion(migrations);
mkdirSync(here, { recursive: true });
const { core, story } = await fillShop(folder);
core.ready().database.writer.pragma('wal_checkpoint(TRUNCATE)');
await core.close();
copyFileSync(join(folder, 'shop.sqlite'), join(here, `shop-v${version}.sqlite`));
writeFileSync(join(here, `shop-v${version}.json`), `${JSON.stringify(story, null, 2)}\n`);
rmSync(folder, { recursive: true });
