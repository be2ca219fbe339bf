import { Button } from '@mantine/core';
import { useRef, useState } from 'react';
import type { DoneItem } from '../../../shared/contract/undo.ts';
import { momentText } from '../days.ts';
import { FormBox } from '../form-box.tsx';
import { hideUndoNotice } from './showing.ts';
import classes from './undo-line.module.css';
import { useUndo } from './use-undo.ts';

/** Whether something that was done can be taken back, was, or why it cannot. */
export function UndoLine({ item }: { item: DoneItem }) {
  if (item.undoneAt !== null) {
    return <p className={classes.quiet}>Undone {momentText(item.undoneAt)}</p>;
  }
  if (item.canUndo) return <UndoHere item={item} />;
  if (item.why === null) return null;
  return (
    <details className={classes.why}>
      <summary className={classes.ask} aria-label={`Cannot be undone: ${item.what}`}>
        Cannot be undone
      </summary>
      <p className={classes.words}>{item.why}</p>
    </details>
  );
}

function UndoHere({ item }: { item: DoneItem }) {
  const [isAsking, setAsking] = useState(false);
  const { undo, command } = useUndo(item.commandId, hideUndoNotice);
  const place = useRef<HTMLDivElement>(null);
  const ask = (asking: boolean) => {
    setAsking(asking);
    requestAnimationFrame(() => place.current?.querySelector('button')?.focus());
  };
  return (
    <div ref={place}>
      {isAsking ? (
        <FormBox
          title="Undo this?"
          submitLabel="Undo"
          command={command}
          onSubmit={undo}
          onCancel={() => {
            command.reset();
            ask(false);
          }}
        >
          <p className={classes.words}>{item.what}</p>
          <p className={classes.words}>
            {item.effect} The history keeps both lines. What was done since stays.
          </p>
        </FormBox>
      ) : (
        <Button
          variant="subtle"
          color="gray"
          c="dimmed"
          px={0}
          aria-label={`Undo: ${item.what}`}
          onClick={() => ask(true)}
        >
          Undo
        </Button>
      )}
    </div>
  );
}
