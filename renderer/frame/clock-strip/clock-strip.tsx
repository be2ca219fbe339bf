import { useMediaQuery } from '@mantine/hooks';
import type { ReactNode } from 'react';
import { Link } from 'wouter';
import type { Clock } from '../../../shared/contract/clocks.ts';
import { Mark } from '../../parts/mark.tsx';
import { ClockLine } from './clock-line.tsx';
import classes from './clock-strip.module.css';
import { clockWords, isPast, stripClocks } from './clock-words.ts';
import { useClockList, useShopSecond } from './use-clocks.ts';

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

interface PlaceProps {
  /** Where it leads; nowhere on the bench, where a stray glove must not leave the work. */
  href: string | null;
  children: ReactNode;
}

function Place({ href, children }: PlaceProps) {
  const className = classes.link ?? '';
  return href === null ? (
    <span className={className}>{children}</span>
  ) : (
    <Link href={href} className={className}>
      {children}
    </Link>
  );
}

/** The clocks that run, under the top bar; nothing at all while none does. */
export function ClockStrip({ isStill = false }: { isStill?: boolean }) {
  const list = useClockList();
  const { clocks, trouble } = list;
  const nowMs = useShopSecond(list, clocks.length > 0);
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
            <Place href={isStill ? null : placeOf(clock)}>
              <span className={classes.label}>{clock.label}</span>
              <ClockLine clock={clock} nowMs={nowMs} />
            </Place>
          </li>
        ))}
        {more > 0 ? (
          <li className={classes.clock}>
            <Place href={isStill ? null : '/finish-room'}>{more} more in the finish room</Place>
          </li>
        ) : null}
      </ul>
      <span role="status" className={classes.said}>
        {passedWords(shown.slice(0, most), nowMs)}
      </span>
    </section>
  );
}
