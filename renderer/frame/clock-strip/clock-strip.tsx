import { useMediaQuery } from '@mantine/hooks';
import { Link } from 'wouter';
import type { Clock } from '../../../shared/contract/clocks.ts';
import { Mark } from '../../parts/mark.tsx';
import { ClockLine } from './clock-line.tsx';
import classes from './clock-strip.module.css';
import { clockWords, isPast, stripClocks } from './clock-words.ts';
import { useClocks } from './use-clocks.ts';

/** One row of them; the others are in the finish room. */
const shownFirst = 3;
const shownNarrow = 1;

/** Where what the clock is about is worked on. */
const placeOf = ({ orderId }: Clock) => (orderId === null ? '/finish-room' : `/orders/${orderId}`);

/** Said aloud when a clock passes, and only then. */
function passedWords(clocks: readonly Clock[], nowMs: number): string {
  return clocks
    .filter((clock) => isPast(clock, nowMs))
    .map((clock) => `${clock.label}: ${clockWords(clock, nowMs).text}`)
    .join('. ');
}

/** The clocks that run, under the top bar; nothing at all while none does. */
export function ClockStrip() {
  const { clocks, nowMs, trouble } = useClocks();
  const isNarrow = useMediaQuery('(max-width: 900px)', false, { getInitialValueInEffect: false });
  const most = isNarrow ? shownNarrow : shownFirst;
  const shown = stripClocks(clocks, nowMs);
  if (shown.length === 0 && trouble === null) return null;
  const more = shown.length - most;
  return (
    <section className={classes.strip} aria-label="Running clocks">
      {trouble === null ? null : <Mark kind="stop">{trouble}</Mark>}
      <ul className={classes.clocks}>
        {shown.slice(0, most).map((clock) => (
          <li key={clock.id} className={classes.clock}>
            <Link href={placeOf(clock)} className={classes.link ?? ''}>
              <span className={classes.label}>{clock.label}</span>
              <ClockLine clock={clock} nowMs={nowMs} />
            </Link>
          </li>
        ))}
        {more > 0 ? (
          <li className={classes.clock}>
            <Link href="/finish-room" className={classes.link ?? ''}>
              {more} more in the finish room
            </Link>
          </li>
        ) : null}
      </ul>
      <span role="status" className={classes.said}>
        {passedWords(shown.slice(0, most), nowMs)}
      </span>
    </section>
  );
}
