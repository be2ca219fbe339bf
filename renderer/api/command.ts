import { useRef, useState } from 'react';
import { newCommandId } from './client.ts';
import { reportDone } from './done.ts';
import { detailsOf, isUnanswered, sentenceOf } from './errors.ts';

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
  } = {},
): Command<Input, Output> {
  const intent = useRef<{ fields: string; input: Input } | null>(null);
  const [busy, setBusy] = useState(false);
  const [cause, setCause] = useState<unknown>(null);

  const send = async (input: Input): Promise<Output | undefined> => {
    setBusy(true);
    setCause(null);
    try {
      const output = await fn(input);
      intent.current = null;
      setBusy(false);
      if (options.isUndo !== true) reportDone(input.commandId);
      options.onDone?.(output);
      return output;
    } catch (error) {
      if (!isUnanswered(error)) intent.current = null;
      setBusy(false);
      setCause(error);
      return undefined;
    }
  };

  return {
    run: (fields) => {
      const same = JSON.stringify(fields);
      if (intent.current?.fields !== same) {
        const input = { ...fields, commandId: newCommandId() } as Input;
        intent.current = { fields: same, input };
      }
      return send(intent.current.input);
    },
    again: async () => (intent.current === null ? undefined : send(intent.current.input)),
    busy,
    cause,
    error: cause === null ? null : sentenceOf(cause),
    details: detailsOf(cause),
    unanswered: isUnanswered(cause),
    reset: () => {
      intent.current = null;
      setCause(null);
    },
  };
}
