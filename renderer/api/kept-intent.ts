import { z } from '../../shared/zod.ts';

const prefix = 'tillermark-intent-';

/** What was meant to be written, with the id it is written under. */
export interface Intent<Input> {
  fields: string;
  input: Input;
}

const kept = z.object({
  fields: z.string().max(200_000),
  input: z.looseObject({ commandId: z.string().max(64) }),
});

/** The intent that nobody has answered yet, from before a reload; null where there is none. */
export function readIntent<Input>(name: string): Intent<Input> | null {
  try {
    const read = kept.safeParse(JSON.parse(localStorage.getItem(prefix + name) ?? 'null'));
    // It is sent as it was written, and the core checks it as it does any other.
    return read.success ? (read.data as unknown as Intent<Input>) : null;
  } catch {
    return null;
  }
}

export function keepIntent(name: string, intent: Intent<unknown> | null): void {
  if (intent === null) localStorage.removeItem(prefix + name);
  else localStorage.setItem(prefix + name, JSON.stringify(intent));
}
