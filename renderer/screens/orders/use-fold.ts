import { useState } from 'react';
import type { Stage } from '../../../shared/stages.ts';

interface Told {
  stage: Stage;
  open: boolean;
  byHand: boolean;
}

/**
 * Whether a section stands open. It opens where it matters, and what is open stays so until the
 * order moves on or somebody folds it: nothing folds away under the hand that just wrote in it.
 */
export function foldAfter(
  told: Told | null,
  now: { stage: Stage; matters: boolean; isBusy: boolean },
): Told {
  const { stage, matters, isBusy } = now;
  if (told === null || told.stage !== stage) {
    return { stage, open: matters || isBusy, byHand: false };
  }
  const opens = !told.open && (isBusy || (matters && !told.byHand));
  return opens ? { ...told, open: true } : told;
}

/** @param now `isBusy`: a form stands open in the section. */
export function useFold(now: { stage: Stage; matters: boolean; isBusy: boolean }) {
  const [kept, setKept] = useState<Told | null>(null);
  const told = foldAfter(kept, now);
  if (told !== kept) setKept(told);
  return {
    isOpen: told.open,
    toggle: () => setKept({ ...told, open: !told.open, byHand: true }),
  };
}
