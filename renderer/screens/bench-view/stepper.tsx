import { BigButton } from './big-button.tsx';
import type { Quantity } from './device-reading.ts';
import classes from './stepper.module.css';
import { stepped, stepText } from './stepping.ts';

interface StepperProps {
  label: string;
  quantity: Quantity;
  value: number;
  /** Read out large: decimal and fraction, or the digits as they are keyed in. */
  shown: string;
  /** Under the value: what it was, or what is forecast. */
  note?: string;
  steps: readonly number[];
  min: number;
  max: number;
  onChange: (value: number) => void;
  /** Takes the keys + and -, the number pad and the devices. */
  isWaiting: boolean;
  onWait?: () => void;
}

/** A number stepped up and down with two big buttons a step; the keys + and - do the same. */
export function Stepper(props: StepperProps) {
  const { label, quantity, value, shown, note, steps, min, max, onChange, isWaiting } = props;
  const by = (step: number) => onChange(stepped(value, step, { min, max }));
  return (
    <fieldset
      className={`${classes.stepper} ${isWaiting ? classes.waiting : ''}`}
      aria-label={label}
    >
      {[...steps].reverse().map((step) => (
        <BigButton
          key={-step}
          label={`−${stepText(step, quantity)}, ${label}`}
          keyHint={isWaiting && step === steps[0] ? '-' : undefined}
          disabled={value <= min}
          onClick={() => by(-step)}
        >
          −{stepText(step, quantity)}
        </BigButton>
      ))}
      <button
        type="button"
        className={classes.value}
        aria-pressed={isWaiting}
        onMouseDown={(event) => event.preventDefault()}
        onClick={props.onWait}
      >
        <span className={classes.label}>{label}</span>
        <span className={classes.shown}>{shown}</span>
        {note === undefined ? null : <span className={classes.note}>{note}</span>}
      </button>
      {steps.map((step) => (
        <BigButton
          key={step}
          label={`+${stepText(step, quantity)}, ${label}`}
          keyHint={isWaiting && step === steps[0] ? '+' : undefined}
          disabled={value >= max}
          onClick={() => by(step)}
        >
          +{stepText(step, quantity)}
        </BigButton>
      ))}
    </fieldset>
  );
}
