import { BigButton } from './big-button.tsx';
import classes from './number-pad.module.css';

const keys = ['7', '8', '9', 'Backspace', '4', '5', '6', '.', '1', '2', '3', '0'] as const;

interface NumberPadProps {
  /** Takes a key as the keyboard would send it. */
  onKey: (key: string) => void;
}

/** The keys of a number pad, digits laid out as on a keyboard, for a finger. Enter is the main button. */
export function NumberPad({ onKey }: NumberPadProps) {
  return (
    <fieldset className={classes.pad} aria-label="Number pad">
      {keys.map((key) =>
        key === 'Backspace' ? (
          <BigButton key={key} label="Rub out the last digit" onClick={() => onKey(key)}>
            ⌫
          </BigButton>
        ) : (
          <BigButton key={key} onClick={() => onKey(key)}>
            {key}
          </BigButton>
        ),
      )}
    </fieldset>
  );
}
