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
        db.exec("UPDATE limb SET note = 'half done'; CREATE TABLE half (id TEXT) STRICT;");
        writeSync(1, 'there\n');
        Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0);
      },
    },
  ],
});
