import type { Migration } from '../../migrations/migration.ts';

/** A small schema of the tests' own, so that they hold whatever the shop's schema becomes. */
export const firstStep: Migration = {
  version: 1,
  name: 'first',
  up: (db) =>
    db.exec(`
      CREATE TABLE limb (id TEXT PRIMARY KEY, note TEXT NOT NULL) STRICT;
      CREATE TABLE cut (id TEXT PRIMARY KEY, limb_id TEXT NOT NULL REFERENCES limb (id)) STRICT;
    `),
};

export const secondStep: Migration = {
  version: 2,
  name: 'tip mass',
  up: (db) => db.exec('ALTER TABLE limb ADD COLUMN tip_mass_gr REAL'),
};

/** Does some work, then fails as a wrong statement would. */
export const failingStep: Migration = {
  version: 2,
  name: 'wrong column',
  up: (db) =>
    db.exec("UPDATE limb SET note = 'half done'; ALTER TABLE limb DROP COLUMN never_there;"),
};
