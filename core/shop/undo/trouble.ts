import type { Kysely } from 'kysely';
import { ShopError } from '../../../shared/errors.ts';
import type { Actor } from '../../storage/context.ts';
import type { Tables } from '../../storage/tables.ts';
import { dayOf } from '../day.ts';
import { type Done, isTouch, keptTables, type RowWrite } from './done.ts';
import { goneOn, type ReadSince, readingSince } from './gone-on.ts';
import { rowChanged, stillNeeded } from './row-changed.ts';
import { neverUndone } from './undoable.ts';
import { stagesOf } from './words.ts';

const stopStays = 'A stop finding stays: resolve it with what was done and seen.';

/** Taking this back would lift a stop, or make less of one. */
function liftsStop({ table, before, after }: RowWrite): boolean {
  if (table !== 'finding' || after?.grade !== 'stop') return false;
  if (before === null) return true;
  const isOpen = after.resolved_at === null;
  return isOpen && (before.grade !== 'stop' || before.resolved_at !== null);
}

/** A check that was not in order keeps the way shut until somebody says why it does not count. */
function hidesFailure({ table, before, after }: RowWrite): boolean {
  const tells = table === 'entry' || table === 'glass_check';
  return tells && before === null && after?.outcome === 'not-ok';
}

function refusedByKind(done: Done): ShopError | null {
  const never = neverUndone(done.name);
  if (never !== null) return new ShopError('CONFLICT', never);
  if (done.writes.some(liftsStop)) return new ShopError('CONFLICT', stopStays);
  if (done.writes.some(hidesFailure)) {
    return new ShopError(
      'CONFLICT',
      'What was found not in order stays: strike it out with a reason.',
    );
  }
  if (done.writes.some((write) => keptTables.includes(write.table))) {
    return new ShopError('CONFLICT', 'What was said or printed stays as it was.');
  }
  if (!done.writes.some((write) => !isTouch(write))) {
    return new ShopError('CONFLICT', 'This changed nothing: there is nothing to undo.');
  }
  return null;
}

function refusedToActor(actor: Actor, done: Done): ShopError | null {
  if (actor.role === 'owner' || actor.personId === done.personId) return null;
  return new ShopError(
    'NOT_ALLOWED',
    `${done.personName} did this: only ${done.personName} or the owner undoes it.`,
  );
}

/** A step back is taken back through the gates, which look at everything anew. */
function asksGates(done: Done): boolean {
  return done.writes.some((write) => {
    const stages = stagesOf(write);
    if (stages === null) return false;
    const route = JSON.parse(String(write.before?.route_json)) as string[];
    return route.indexOf(stages.to) < route.indexOf(stages.from);
  });
}

/**
 * Why a command cannot be taken back, as far as that can be seen without doing it; null where
 * nothing stands against it.
 */
export async function undoTrouble(
  db: Kysely<Tables>,
  actor: Actor,
  done: Done,
  read: ReadSince = readingSince(db),
): Promise<ShopError | null> {
  if (done.undone !== null) {
    const { personName, at } = done.undone;
    return new ShopError('CONFLICT', `${personName} undid this on ${dayOf(at)}.`);
  }
  const plain = refusedByKind(done) ?? refusedToActor(actor, done);
  if (plain !== null) return plain;
  const gone = asksGates(done) ? null : await goneOn(db, done, read);
  if (gone !== null) return gone;
  for (const write of done.writes.filter((each) => !isTouch(each))) {
    const changed = await rowChanged(db, write);
    if (changed !== null) return changed;
  }
  return stillNeeded(
    db,
    done.writes.filter((write) => write.before === null),
  );
}
