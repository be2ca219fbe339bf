import type { ReactNode } from 'react';
import classes from './finish-room.module.css';

interface AnswerProps {
  /** What is shown was worked out from what stood in the form before. */
  isBusy: boolean;
  children: ReactNode;
}

/** What was worked out from a form; the last answer stands, set back, until the next is there. */
export function Answer({ isBusy, children }: AnswerProps) {
  return (
    <div className={classes.answer} aria-busy={isBusy}>
      {children}
    </div>
  );
}
