import type { ReactNode } from 'react';
import { Mark } from '../../parts/mark.tsx';
import classes from './bench-shell.module.css';
import { BigNumbers } from './big-numbers.tsx';
import type { NumberRow } from './seen-text.ts';

interface BenchShellProps {
  sentence: string;
  numbers: NumberRow;
  tiller: string | null;
  /** The last weighing beside what was expected. */
  told: string | null;
  cautions: readonly string[];
  /** Entry of numbers needs the width; a card and signs need the height. */
  layout: 'rows' | 'columns';
  children: ReactNode;
  /** The way to weigh, to undo and to strike out; always at the same place. */
  side: ReactNode;
}

/** One sentence, the number row, then what the hands do; cautions of this step alone. */
export function BenchShell(props: BenchShellProps) {
  const { sentence, numbers, tiller, told, cautions, layout, children, side } = props;
  return (
    <div className={classes.shell}>
      <p className={classes.sentence} aria-live="polite">
        {sentence}
      </p>
      <div className={classes[layout]}>
        <div className={classes.facts}>
          <BigNumbers {...numbers} />
          <div className={classes.notes}>
            {told === null ? null : <p className={classes.told}>{told}</p>}
            {tiller === null ? null : <p className={classes.tiller}>{tiller}</p>}
            {cautions.map((text) => (
              <p key={text} className={classes.caution}>
                <Mark kind="attention">{text}</Mark>
              </p>
            ))}
          </div>
        </div>
        <div className={classes.work}>{children}</div>
        <div className={classes.side}>{side}</div>
      </div>
    </div>
  );
}
