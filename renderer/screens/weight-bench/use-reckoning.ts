import { useCallback, useEffect, useRef, useState } from 'react';
import type { Reckoning } from '../../../shared/plan-answer.ts';
import type { PlanInput } from '../../../shared/plan-input.ts';
import { api } from '../../api/client.ts';
import { merged } from './merged-answer.ts';
import { Reckoner } from './reckoner.ts';

/** What typing settles into before it is reckoned, milliseconds. */
const typingMs = 250;

export interface ReckoningView {
  /** The last answer; it stays until a newer one comes. */
  answer: Reckoning | null;
  /** What it was reckoned from. */
  input: PlanInput | null;
  /** It leaves out what a full answer tells: a slider moves. */
  isBusy: boolean;
  error: unknown;
  again(): void;
}

/** Keeps the answer to an input. Null while the input holds something that is no number. */
export function useReckoning(input: PlanInput | null, isSliding: boolean): ReckoningView {
  const [view, setView] = useState<Omit<ReckoningView, 'again'>>({
    answer: null,
    input: null,
    isBusy: false,
    error: null,
  });
  const reckoner = useRef<Reckoner | null>(null);
  reckoner.current ??= new Reckoner((asked, signal) => api.plans.reckon(asked, { signal }), {
    onBusy: (isBusy) => setView((now) => ({ ...now, isBusy })),
    onAnswer: (answer, asked) =>
      setView((now) => ({
        ...now,
        error: null,
        input: asked.input,
        answer: asked.detail === 'full' ? answer : merged(now.answer, answer),
      })),
    onError: (error) => setView((now) => ({ ...now, error })),
  });
  useEffect(() => {
    const current = reckoner.current;
    if (input === null) {
      current?.stop();
      return undefined;
    }
    if (isSliding) {
      current?.ask({ input, detail: 'sliding' });
      return undefined;
    }
    const timer = setTimeout(() => current?.ask({ input, detail: 'full' }), typingMs);
    return () => clearTimeout(timer);
  }, [input, isSliding]);
  useEffect(() => () => reckoner.current?.stop(), []);
  const again = useCallback(() => {
    if (input !== null) reckoner.current?.ask({ input, detail: 'full' });
  }, [input]);
  return { ...view, again };
}
