import { expect, onTestFinished } from 'vitest';
import { type ReadyShop, startUp } from '../../core/storage/start-up.ts';
import type { Migration } from '../../migrations/migration.ts';
import { type NeedsYou, type StartUpState, startUpState } from '../../shared/start-up.ts';
import { firstStep } from './steps.ts';

export const at = '2026-03-02T09:00:00.000Z';

export interface Attempt {
  result: ReadyShop | NeedsYou;
  /** Phases told on the way, in order. */
  phases: string[];
}

/** Starts up in the folder; every state it tells must fit the contract. */
export async function attempt(
  dataFolder: string,
  migrations: readonly Migration[] = [firstStep],
): Promise<Attempt> {
  const states: StartUpState[] = [];
  const onState = (state: StartUpState) => states.push(startUpState.parse(state));
  const result = await startUp({ dataFolder, migrations, now: () => at, onState });
  if (result.phase === 'ready') onTestFinished(() => result.close());
  return { result, phases: states.map((state) => state.phase) };
}

export async function openAt(
  dataFolder: string,
  migrations: readonly Migration[] = [firstStep],
): Promise<ReadyShop> {
  const { result } = await attempt(dataFolder, migrations);
  if (result.phase !== 'ready') throw new Error(`${result.reason}: ${result.sentence}`);
  return result;
}

export async function refusedAt(
  dataFolder: string,
  migrations: readonly Migration[] = [firstStep],
): Promise<NeedsYou> {
  const { result, phases } = await attempt(dataFolder, migrations);
  if (result.phase === 'ready') throw new Error('the shop opened');
  expect(phases.at(-1)).toBe('needs-you');
  return result;
}

/** A shop in the folder with one limb in it, closed again. */
export async function shopWithLimb(dataFolder: string): Promise<void> {
  const shop = await openAt(dataFolder);
  shop.database.writer.exec("INSERT INTO limb (id, note) VALUES ('upper', 'as it came')");
  shop.close();
}

export function notes(shop: ReadyShop): unknown[] {
  return shop.database.reader.prepare('SELECT note FROM limb ORDER BY id').pluck().all();
}
