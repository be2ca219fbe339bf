import { useState } from 'react';
import { useBenchKeys } from './use-bench-keys.ts';

interface ChoiceKeys {
  /** What is chosen by 1, 2, 3 ... and Enter. */
  choices: readonly (() => void)[];
  /** Enter with nothing keyed in. */
  onConfirm?: () => void;
  onBack?: () => void;
  onStep?: (by: 1 | -1) => void;
}

/**
 * Answers chosen by a digit and Enter. The digit alone does nothing, so that a calliper pressed by
 * accident answers no question.
 */
export function useChoiceKeys({ choices, ...keys }: ChoiceKeys): string {
  const [text, setText] = useState('');
  useBenchKeys({
    onText: setText,
    onEntered: (entered) => {
      const chosen = /^\d$/.test(entered) ? choices[Number(entered) - 1] : undefined;
      chosen?.();
    },
    ...keys,
  });
  return text;
}
