import { Button, Loader } from '@mantine/core';
import type { ReactNode } from 'react';
import { sentenceOf } from '../api/errors.ts';
import { Mark } from './mark.tsx';
import classes from './notes.module.css';

interface EmptyNoteProps {
  title: string;
  /** What to do first. */
  children?: ReactNode;
}

export function EmptyNote({ title, children }: EmptyNoteProps) {
  return (
    <div className={`${classes.note} ${classes.empty}`}>
      <p className={classes.title}>{title}</p>
      {children}
    </div>
  );
}

export function BusyNote({ children = 'Reading ...' }: { children?: ReactNode }) {
  return (
    <div className={classes.note} role="status">
      <Loader size="sm" mr="sm" aria-hidden="true" />
      {children}
    </div>
  );
}

interface ErrorNoteProps {
  /** What was thrown, or a sentence ready to show. */
  error: unknown;
  onAgain?: (() => void) | undefined;
  againLabel?: string;
  busy?: boolean;
}

/** An error beside what it is about, with the way to try again where there is one. */
export function ErrorNote({
  error,
  onAgain,
  againLabel = 'Try again',
  busy = false,
}: ErrorNoteProps) {
  return (
    <div className={`${classes.note} ${classes.error} ${classes.row}`} role="alert">
      <Mark kind="stop">{typeof error === 'string' ? error : sentenceOf(error)}</Mark>
      {onAgain === undefined ? null : (
        <Button variant="default" onClick={onAgain} loading={busy}>
          {againLabel}
        </Button>
      )}
    </div>
  );
}
