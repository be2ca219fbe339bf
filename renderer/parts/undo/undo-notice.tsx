import { Button } from '@mantine/core';
import { useEffect, useRef } from 'react';
import type { DoneItem } from '../../../shared/contract/undo.ts';
import { isTyping } from '../../frame/focus.ts';
import { CommandError } from '../command-error.tsx';
import { Mark } from '../mark.tsx';
import { isUndoKey } from './undo-key.ts';
import classes from './undo-notice.module.css';
import { useUndo } from './use-undo.ts';

interface UndoNoticeProps {
  item: DoneItem;
  /** The result was shown long enough. */
  onDone: () => void;
}

const resultMs = 4000;

/**
 * What was just done, with the way back: a button, and Ctrl or Cmd with Z while it shows. A field or
 * an open dialog keeps that key for itself.
 */
export function UndoNotice({ item, onDone }: UndoNoticeProps) {
  const { undo, isUndone, command } = useUndo(item.commandId);
  const act = useRef(undo);
  act.current = undo;
  const isOffered = !isUndone && command.error === null;

  useEffect(() => {
    if (!isOffered) return;
    const onKey = (event: KeyboardEvent) => {
      if (!isUndoKey(event) || isTyping(event.target)) return;
      if (document.querySelector('[role=dialog]') !== null) return;
      event.preventDefault();
      act.current();
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, [isOffered]);

  useEffect(() => {
    if (!isUndone) return;
    const timer = setTimeout(onDone, resultMs);
    return () => clearTimeout(timer);
  }, [isUndone, onDone]);

  if (isUndone) return <Mark kind="done">Undone: {item.what}</Mark>;
  return (
    <div className={classes.notice}>
      <p className={classes.what}>{item.what}</p>
      {command.error === null ? (
        <Button
          variant="default"
          loading={command.busy}
          onClick={undo}
          aria-label={`Undo: ${item.what}`}
          aria-keyshortcuts="Control+Z Meta+Z"
        >
          Undo
        </Button>
      ) : null}
      <CommandError command={command} />
    </div>
  );
}
