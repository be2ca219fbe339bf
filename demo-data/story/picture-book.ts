import type { DemoBow } from '../cast/make-bow.ts';
import { type Subject, takePhotograph } from '../pictures/pictures.ts';

/** Boxes and bills look alike whatever was in them: a few are drawn and used again. */
const shared: ReadonlySet<Subject> = new Set(['box', 'crushed box', 'bill', 'tillering wall']);
const ahead = 2;

/** Photographs, each drawn once, and drawn ahead while the records are written. */
export class PictureBook {
  readonly #drawn = new Map<string, Promise<Buffer>>();

  /**
   * Never rejects here: whoever takes the picture is told.
   * @param signal ends it: what is not begun by then is drawn when it is taken.
   */
  async prepare(
    wanted: readonly (readonly [Subject, DemoBow])[],
    signal: AbortSignal,
  ): Promise<void> {
    const queue = wanted.values();
    const draw = async () => {
      for (const [subject, bow] of queue) {
        if (signal.aborted) return;
        await this.take(subject, bow).catch(() => {});
      }
    };
    await Promise.all(Array.from({ length: ahead }, draw));
  }

  take(subject: Subject, bow: DemoBow): Promise<Buffer> {
    const name = shared.has(subject) ? `any ${bow.fields.kind}` : bow.key;
    const key = `${subject} ${name}`;
    const known = this.#drawn.get(key);
    if (known !== undefined) return known;
    const fresh = takePhotograph(subject, bow.look, name);
    this.#drawn.set(key, fresh);
    return fresh;
  }
}
