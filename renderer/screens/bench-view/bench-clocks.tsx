import { VisuallyHidden } from '@mantine/core';
import { useClickOutside } from '@mantine/hooks';
import { useId, useState } from 'react';
import type { Clock } from '../../../shared/contract/clocks.ts';
import { ClockLine } from '../../frame/clock-strip/clock-line.tsx';
import { passedWords } from '../../frame/clock-strip/clock-words.ts';
import { useStripClocks } from '../../frame/clock-strip/use-clocks.ts';
import { Mark } from '../../parts/mark.tsx';
import classes from './bench-clocks.module.css';

interface LineProps {
  clock: Clock;
  nowMs: number;
}

function Line({ clock, nowMs }: LineProps) {
  return (
    <>
      <span className={classes.label}>{clock.label}</span>
      <ClockLine clock={clock} nowMs={nowMs} />
    </>
  );
}

interface AllProps {
  clocks: readonly Clock[];
  nowMs: number;
  trouble: string | null;
  first: React.ReactNode;
}

/** The first line is a button: it unfolds all of them over the work, and leads nowhere. */
function Unfolding({ clocks, nowMs, trouble, first }: AllProps) {
  const [isOpen, setOpen] = useState(false);
  const box = useClickOutside<HTMLDivElement>(() => setOpen(false));
  const list = useId();
  return (
    <div ref={box} className={classes.unfolding}>
      <button
        type="button"
        className={classes.first}
        aria-expanded={isOpen}
        aria-controls={list}
        onMouseDown={(event) => event.preventDefault()}
        onClick={() => setOpen(!isOpen)}
      >
        {first}
        <span className={classes.more}>
          {isOpen ? 'Close' : clocks.length > 1 ? `${clocks.length - 1} more` : 'Read'}
        </span>
      </button>
      <section
        id={list}
        className={classes.all}
        hidden={!isOpen}
        aria-label="All clocks"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a list longer than the screen scrolls by keyboard.
        tabIndex={0}
      >
        {trouble === null ? null : <Mark kind="stop">{trouble}</Mark>}
        <ul className={classes.list}>
          {clocks.map((clock) => (
            <li key={clock.id} className={classes.words}>
              <Line clock={clock} nowMs={nowMs} />
            </li>
          ))}
        </ul>
      </section>
    </div>
  );
}

/**
 * The clocks of the finish room in the head of the bench: the most pressing one, the others behind
 * it. It takes no height from the work, and a stray glove does not leave the work by it.
 */
export function BenchClocks() {
  const { shown, trouble, nowMs } = useStripClocks();
  const [pressing] = shown;
  if (pressing === undefined && trouble === null) return null;
  const words =
    trouble !== null ? (
      <span className={classes.trouble}>
        <Mark kind="stop">{trouble}</Mark>
      </span>
    ) : pressing === undefined ? null : (
      <span className={classes.words}>
        <Line clock={pressing} nowMs={nowMs} />
      </span>
    );
  return (
    <section className={classes.clocks} aria-label="Running clocks">
      {trouble === null && shown.length === 1 ? (
        <div className={classes.alone}>{words}</div>
      ) : (
        <Unfolding clocks={shown} nowMs={nowMs} trouble={trouble} first={words} />
      )}
      <VisuallyHidden role="status">{passedWords(shown.slice(0, 1), nowMs)}</VisuallyHidden>
    </section>
  );
}
