import type { ReactNode } from 'react';
import classes from './big-button.module.css';

interface BigButtonProps {
  children: ReactNode;
  onClick: () => void;
  /** Key that does the same, printed on the button. */
  keyHint?: string | undefined;
  kind?: 'main' | 'plain' | 'stop';
  pressed?: boolean;
  disabled?: boolean;
  label?: string;
}

/**
 * A button for a gloved finger, 20 mm at the least. A tap does not take the focus, so that Enter
 * stays the key of the main action.
 */
export function BigButton(props: BigButtonProps) {
  const { children, onClick, keyHint, kind = 'plain', pressed, disabled = false, label } = props;
  return (
    <button
      type="button"
      className={`${classes.button} ${classes[kind] ?? ''}`}
      aria-pressed={pressed}
      aria-label={label}
      disabled={disabled}
      onMouseDown={(event) => event.preventDefault()}
      onClick={onClick}
    >
      <span>{children}</span>
      {keyHint === undefined ? null : (
        <span className={classes.key} aria-hidden="true">
          {keyHint}
        </span>
      )}
    </button>
  );
}
