import type { Database } from 'better-sqlite3';
import type { Migration } from '../../migrations/migration.ts';
import { schemaVersionOf } from './open.ts';
import { StartUpRefusal } from './start-up-refusal.ts';

export function newestVersion(migrations: readonly Migration[]): number {
  return migrations.at(-1)?.version ?? 0;
}

/** @throws StartUpRefusal newer-file; nothing is written to such a file. */
export function refuseNewerFile(found: number, migrations: readonly Migration[]): void {
  const known = newestVersion(migrations);
  if (found > known) {
    throw new StartUpRefusal(
      'newer-file',
      `This shop was last opened by a newer Tillermark (file version ${found}, this program knows ${known}). Install the newer program.`,
    );
  }
}

export function pendingSteps(db: Database, migrations: readonly Migration[]): readonly Migration[] {
  const found = schemaVersionOf(db);
  return migrations.filter((step) => step.version > found);
}

function runStep(db: Database, step: Migration): void {
  try {
    step.up(db);
  } catch (error) {
    throw StartUpRefusal.from(
      error,
      'failed-migration',
      `The shop file could not be brought up to date (step ${step.version}, ${step.name}). It was left as it was.`,
    );
  }
}

/** Runs all pending steps in one transaction: the file has the new schema or the old one, never between. */
export function migrate(db: Database, steps: readonly Migration[]): void {
  if (steps.length === 0) return;
  db.pragma('foreign_keys = OFF');
  try {
    db.exec('BEGIN IMMEDIATE');
    for (const step of steps) runStep(db, step);
    const broken = db.pragma('foreign_key_check') as unknown[];
    if (broken.length > 0) {
      throw new StartUpRefusal(
        'failed-migration',
        'The shop file could not be brought up to date: references would break. It was left as it was.',
      );
    }
    db.pragma(`user_version = ${newestVersion(steps)}`);
    db.exec('COMMIT');
  } catch (error) {
    if (db.inTransaction) db.exec('ROLLBACK');
    throw error;
  } finally {
    db.pragma('foreign_keys = ON');
  }
}
