import { type DraftBody, draftBody } from '../../../shared/contract/intake.ts';
import { z } from '../../../shared/zod.ts';

/** What this tab is typing, so that leaving the screen or loading it again loses nothing. */
const kept = z.object({ id: z.string(), body: draftBody });
type Kept = z.infer<typeof kept>;

const keyOf = (personId: string | null) => `tillermark-intake-${personId ?? 'nobody'}`;

export function keptDraft(personId: string | null): Kept | null {
  try {
    const read = kept.safeParse(JSON.parse(sessionStorage.getItem(keyOf(personId)) ?? 'null'));
    return read.success ? read.data : null;
  } catch {
    return null;
  }
}

export function keepDraft(personId: string | null, id: string, body: DraftBody): void {
  sessionStorage.setItem(keyOf(personId), JSON.stringify({ id, body }));
}

export function forgetDraft(personId: string | null): void {
  sessionStorage.removeItem(keyOf(personId));
}
