import { writeSync } from 'node:fs';
import { startUp } from '../../../core/storage/start-up.ts';
import { firstStep } from '../steps.ts';

/** Starts a shop and never comes back from its second step, with that step's work half done. */
const [, , dataFolder = ''] = process.argv;
await startUp({
  dataFolder,
  now: () => '2026-03-02T09:00:00.000Z',
  onState: () => {},
  migrations: [
    firstStep,
    {
      version: 2,
      name: 'hang',
      up: (db) => {
        // So small a cache makes SQLite write uncommitted pages to the disk.
        db.pragma('cache_size = 5');
        db.exec("UPDATE limb SET note = 'half done'; CREATE TABLE half (id TEXT) STRICT;");
        const insert = db.prepare('INSERT INTO limb VALUES (?, ?)');
        for (let n = 0; n < 500; n += 1) insert.run(`half-${n}`, 'x'.repeat(500));
        writeSync(1, 'there\n');
        Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0);
      },
    },
  ],
});
