import { VisuallyHidden } from '@mantine/core';
import { useMediaQuery } from '@mantine/hooks';
import { Link } from 'wouter';
import type { Clock } from '../../../shared/contract/clocks.ts';
import { Mark } from '../../parts/mark.tsx';
import { ClockLine } from './clock-line.tsx';
import classes from './clock-strip.module.css';
import { passedWords } from './clock-words.ts';
import { useStripClocks } from './use-clocks.ts';

const once = { getInitialValueInEffect: false };

/** As many as stand in one row beside the rail; the others are in the finish room. */
function useMost(): number {
  const isNarrow = useMediaQuery('(max-width: 900px)', false, once);
  const isMiddling = useMediaQuery('(max-width: 1400px)', false, once);
  return isNarrow ? 1 : isMiddling ? 2 : 3;
}

/** Where what the clock is about is worked on. */
const placeOf = ({ orderId }: Clock) => (orderId === null ? '/finish-room' : `/orders/${orderId}`);

/** The clocks that run, under the top bar; nothing at all while none does. */
export function ClockStrip() {
  const { shown, trouble, nowMs } = useStripClocks();
  const most = useMost();
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
            <Link
              href="/finish-room"
              className={classes.link ?? ''}
              aria-label={`${more} more in the finish room`}
            >
              <span>
                {more} more<span className={classes.where}> in the finish room</span>
              </span>
            </Link>
          </li>
        ) : null}
      </ul>
      <VisuallyHidden role="status">{passedWords(shown.slice(0, most), nowMs)}</VisuallyHidden>
    </section>
  );
}
