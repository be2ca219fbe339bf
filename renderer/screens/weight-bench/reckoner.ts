import type { ReckonInput, Reckoning } from '../../../shared/plan-answer.ts';

interface Heard {
  onBusy(isBusy: boolean): void;
  onAnswer(answer: Reckoning, asked: ReckonInput): void;
  onError(error: unknown): void;
}

type Ask = (asked: ReckonInput, signal: AbortSignal) => Promise<Reckoning>;

/**
 * Asks for answers, the latest first. A full question gives up whatever is under way. While a
 * slider moves, the question under way is let finish, so that something shows, and only the
 * newest of those that came meanwhile follows it.
 */
export class Reckoner {
  readonly #ask: Ask;
  readonly #heard: Heard;
  #current: { asked: ReckonInput; stop: AbortController } | null = null;
  #next: ReckonInput | null = null;

  constructor(ask: Ask, heard: Heard) {
    this.#ask = ask;
    this.#heard = heard;
  }

  ask(asked: ReckonInput): void {
    if (asked.detail === 'sliding' && this.#current?.asked.detail === 'sliding') {
      this.#next = asked;
      return;
    }
    this.#giveUp();
    void this.#run(asked);
  }

  stop(): void {
    this.#giveUp();
    this.#heard.onBusy(false);
  }

  #giveUp(): void {
    this.#next = null;
    this.#current?.stop.abort();
    this.#current = null;
  }

  async #run(asked: ReckonInput): Promise<void> {
    const mine = { asked, stop: new AbortController() };
    this.#current = mine;
    this.#heard.onBusy(true);
    try {
      const answer = await this.#ask(asked, mine.stop.signal);
      if (this.#current === mine) this.#heard.onAnswer(answer, asked);
    } catch (error) {
      if (this.#current === mine) this.#heard.onError(error);
    }
    if (this.#current !== mine) return;
    this.#current = null;
    const next = this.#next;
    this.#next = null;
    if (next === null) this.#heard.onBusy(false);
    else await this.#run(next);
  }
}
