import type { ReactNode } from 'react';
import classes from './finish-room.module.css';

interface TickProps {
  isOn: boolean;
  onChange: (isOn: boolean) => void;
  children: ReactNode;
  /** One of several that exclude each other. */
  radioOf?: string;
  disabled?: boolean;
}

/** Something to tick, as large as a gloved finger; the whole box takes the tap. */
export function Tick({ isOn, onChange, children, radioOf, disabled = false }: TickProps) {
  return (
    <label className={classes.tick}>
      <input
        type={radioOf === undefined ? 'checkbox' : 'radio'}
        name={radioOf}
        checked={isOn}
        disabled={disabled}
        onChange={(event) => onChange(event.currentTarget.checked)}
      />
      <span className={classes.words}>{children}</span>
    </label>
  );
}

interface TickGroupProps {
  label: string;
  /** One below the other over the whole width, for long words. */
  isWide?: boolean;
  error?: string | undefined;
  children: ReactNode;
}

export function TickGroup({ label, isWide = false, error, children }: TickGroupProps) {
  return (
    <fieldset className={classes.group} aria-invalid={error === undefined ? undefined : true}>
      <legend className={classes.legend}>{label}</legend>
      <div className={`${classes.ticks} ${isWide ? classes.wide : ''}`}>{children}</div>
      {error === undefined ? null : (
        <p className={classes.bad} role="alert" style={{ color: 'var(--stop)' }}>
          {error}
        </p>
      )}
    </fieldset>
  );
}
