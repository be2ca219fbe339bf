import { useRef, useState } from 'react';
import { newCommandId } from './client.ts';
import { reportDone } from './done.ts';
import { detailsOf, isUnanswered, sentenceOf } from './errors.ts';
import { type Intent, keepIntent, readIntent } from './kept-intent.ts';

type Fields<Input> = Omit<Input, 'commandId'>;

export interface Command<Input, Output> {
  /** Answers the result, or undefined when it failed; the error is then in `error`. */
  run(input: Fields<Input>): Promise<Output | undefined>;
  /** Sends the same command with the same id again, after an answer got lost. */
  again(): Promise<Output | undefined>;
  busy: boolean;
  /** One sentence, or null. */
  error: string | null;
  cause: unknown;
  details: Record<string, string>;
  /** Nobody knows whether the last try was carried out: offer "Try again", which is harmless. */
  unanswered: boolean;
  reset(): void;
}

/**
 * Runs a command. Its id is made once per intent and kept until the core has answered, so that a
 * repeat after a lost connection is carried out once.
 */
export function useCommand<Input extends { commandId: string }, Output>(
  fn: (input: Input) => Promise<Output>,
  options: {
    onDone?: (output: Output) => void;
    /** Says nothing of itself: it takes back something else. */
    isUndo?: boolean;
    /** Keeps an intent that was not answered in this browser under that name, over a reload too. */
    keptAs?: string;
  } = {},
): Command<Input, Output> {
  const { keptAs } = options;
  const intent = useRef<Intent<Input> | null | undefined>(undefined);
  if (intent.current === undefined) {
    intent.current = keptAs === undefined ? null : readIntent<Input>(keptAs);
  }
  const mean = (next: Intent<Input> | null) => {
    intent.current = next;
    if (keptAs !== undefined) keepIntent(keptAs, next);
  };
  const [busy, setBusy] = useState(false);
  const [cause, setCause] = useState<unknown>(null);

  const send = async (input: Input): Promise<Output | undefined> => {
    setBusy(true);
    setCause(null);
    try {
      const output = await fn(input);
      mean(null);
      setBusy(false);
      if (options.isUndo !== true) reportDone(input.commandId);
      options.onDone?.(output);
      return output;
    } catch (error) {
      if (!isUnanswered(error)) mean(null);
      setBusy(false);
      setCause(error);
      return undefined;
    }
  };

  return {
    run: (fields) => {
      const same = JSON.stringify(fields);
      const meant = intent.current?.fields === same ? intent.current : null;
      const input = meant?.input ?? ({ ...fields, commandId: newCommandId() } as Input);
      mean({ fields: same, input });
      return send(input);
    },
    again: async () => (intent.current ? send(intent.current.input) : undefined),
    busy,
    cause,
    error: cause === null ? null : sentenceOf(cause),
    details: detailsOf(cause),
    unanswered: isUnanswered(cause),
    reset: () => {
      mean(null);
      setCause(null);
    },
  };
}
