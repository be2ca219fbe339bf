import { Mark } from '../../parts/mark.tsx';
import { BigButton } from './big-button.tsx';
import classes from './changed-note.module.css';

/** The advice became another while nobody here did anything. */
export function ChangedNote({ onSeen }: { onSeen: () => void }) {
  return (
    <div className={classes.changed} role="alert">
      <Mark kind="attention">
        The advice has changed: something else was recorded for this bow. This is the new one.
      </Mark>
      <BigButton onClick={onSeen}>I have seen it</BigButton>
    </div>
  );
}
