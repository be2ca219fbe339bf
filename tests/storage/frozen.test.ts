import { copyFileSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, onTestFinished, test } from 'vitest';
import { Core } from '../../core/host/core.ts';
import { newestVersion } from '../../core/storage/migrate.ts';
import { migrations } from '../../migrations/index.ts';
import { tempFolder } from '../support/temp-folder.ts';
import { type FrozenStory, storyOf } from './frozen/fill-shop.ts';
import { retell } from './frozen/retell.ts';

const here = fileURLToPath(new URL('frozen', import.meta.url));
const frozen = readdirSync(here).filter((name) => name.endsWith('.sqlite'));

/** Steps that shipped with a later one and never alone: no shop stood at their schema. */
const neverAlone: readonly number[] = [3, 4];

test('every schema that has shipped is frozen', () => {
  const shipped = migrations
    .map(({ version }) => version)
    .filter((version) => !neverAlone.includes(version));
  expect(frozen.toSorted()).toEqual(shipped.map((version) => `shop-v${version}.sqlite`));
});

test.each(frozen)(
  '%s, with data in it, opens with this program and tells the same story',
  async (name) => {
    const folder = tempFolder();
    copyFileSync(join(here, name), join(folder, 'shop.sqlite'));
    const core = new Core({ dataFolder: folder });
    onTestFinished(() => core.close());
    expect(await core.settled()).toMatchObject({
      phase: 'ready',
      schemaVersion: newestVersion(migrations),
    });
    const told = JSON.parse(
      readFileSync(join(here, name.replace('.sqlite', '.json')), 'utf8'),
    ) as FrozenStory;
    // Later versions may add fields; what was there must still be told.
    expect(await storyOf(core)).toMatchObject(retell(told));
  },
);
