import { ScanBuffer } from '../../frame/scan-buffer.ts';

/** What one press of a key asks for. */
export type KeyAct =
  | { act: 'text'; text: string }
  | { act: 'enter'; burst: string | null; text: string }
  | { act: 'step'; by: 1 | -1 }
  | { act: 'undo' }
  | { act: 'none' };

/** Two keys closer together than this came from a device, milliseconds. */
const deviceGapMs = 50;
/** From the keys to a device a hand needs longer than this, milliseconds. */
const reachMs = 400;
const longest = 40;

/**
 * Makes sense of the keys of a number pad, a scanner, a calliper and a scale, which all arrive as
 * key presses. A burst ended by Enter is a device's and stands for itself: whatever was keyed in
 * some time before it is dropped. Keys that come slowly build up a number, Enter confirms it; the
 * last of them may come as quick as a device's and still belong to the same number.
 */
export class KeyReader {
  readonly #buffer = new ScanBuffer(1);
  #text = '';
  #last = Number.NEGATIVE_INFINITY;
  /** The quick keys of now follow keys of the same hand. */
  #isByHand = false;

  get text(): string {
    return this.#text;
  }

  clear(): void {
    this.#text = '';
  }

  press(key: string, atMs: number): KeyAct {
    const gapMs = atMs - this.#last;
    const quick = gapMs < deviceGapMs;
    if (!quick) this.#isByHand = this.#text !== '' && gapMs < reachMs;
    this.#last = atMs;
    const burst = this.#buffer.press(key, atMs);
    return this.#take(key, quick, this.#isByHand ? null : burst);
  }

  /** A key of the pad on the screen: a finger never makes a burst. */
  tap(key: string): KeyAct {
    this.#last = Number.NEGATIVE_INFINITY;
    return this.#take(key, false, null);
  }

  #take(key: string, quick: boolean, burst: string | null): KeyAct {
    if (key === 'Enter') {
      const text = this.#text;
      this.#text = '';
      return { act: 'enter', burst: burst !== null && burst.length > 1 ? burst : null, text };
    }
    if (key === 'Backspace') {
      if (this.#text === '') return { act: 'undo' };
      this.#text = this.#text.slice(0, -1);
      return { act: 'text', text: this.#text };
    }
    if (!quick && (key === '+' || key === '-')) return { act: 'step', by: key === '+' ? 1 : -1 };
    if (key.length !== 1) return { act: 'none' };
    // Letters by hand mean nothing here; in a burst they are a unit or part of a number.
    if (!quick && !/[\d.,]/.test(key)) return { act: 'none' };
    this.#text = (this.#text + key).slice(0, longest);
    return { act: 'text', text: this.#text };
  }
}
