import type { Clock } from '../../../shared/contract/clocks.ts';
import { Mark } from '../../parts/mark.tsx';
import classes from './clock-strip.module.css';
import { clockWords } from './clock-words.ts';

interface ClockLineProps {
  clock: Clock;
  nowMs: number;
}

/** One clock: a ring while it runs, the shape of its state once it is past. */
export function ClockLine({ clock, nowMs }: ClockLineProps) {
  const { kind, text } = clockWords(clock, nowMs);
  if (kind !== null) return <Mark kind={kind}>{text}</Mark>;
  return (
    <span className={classes.running}>
      <svg className={classes.ring} viewBox="0 0 20 20" aria-hidden="true" focusable="false">
        <circle cx="10" cy="10" r="7.5" />
        <path d="M10 5.5V10L13 12" />
      </svg>
      <span>{text}</span>
    </span>
  );
}
