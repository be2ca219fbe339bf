import type { Wording } from '../../../shared/contract/wordings.ts';
import type { WordingUse } from '../../../shared/wordings.ts';
import type { OpenShop } from '../../storage/context.ts';
import { builtIn } from './built-in.ts';

type Db = OpenShop['read'];

/** A version of a wording, with the id of its row; null for the built-in text. */
export interface KeptWording extends Wording {
  id: string | null;
}

function builtInWording(use: WordingUse): KeptWording {
  return { id: null, use, version: 0, ...builtIn(use), writtenAt: null, writtenBy: '' };
}

/** All versions of one use, newest first, down to the built-in text. */
export async function versionsOf(db: Db, use: WordingUse): Promise<KeptWording[]> {
  const rows = await db
    .selectFrom('wording')
    .innerJoin('person', 'person.id', 'wording.person_id')
    .selectAll('wording')
    .select('person.name as writer')
    .where('use', '=', use)
    .orderBy('version', 'desc')
    .limit(1999)
    .execute();
  const kept = rows.map((row) => ({
    id: row.id,
    use,
    version: row.version,
    subject: row.subject,
    body: row.body,
    writtenAt: row.written_at,
    writtenBy: row.writer,
  }));
  return [...kept, builtInWording(use)];
}

/** The version in use: the newest. */
export async function wordingNow(db: Db, use: WordingUse): Promise<KeptWording> {
  return (await versionsOf(db, use))[0] ?? builtInWording(use);
}
