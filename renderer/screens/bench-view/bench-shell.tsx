import type { ReactNode } from 'react';
import { Mark } from '../../parts/mark.tsx';
import classes from './bench-shell.module.css';
import { BigButton } from './big-button.tsx';
import { BigNumbers } from './big-numbers.tsx';
import type { NumberRow } from './seen-text.ts';

interface BenchShellProps {
  sentence: string;
  numbers: NumberRow;
  tiller: string | null;
  cautions: readonly string[];
  isChanged: boolean;
  /** Entry of numbers needs the width; a card and signs need the height. */
  layout: 'rows' | 'columns';
  onSeen: () => void;
  children: ReactNode;
  /** The way to weigh, to undo and to strike out; always at the same place. */
  side: ReactNode;
}

/** One sentence, the number row, then what the hands do; cautions of this step alone. */
export function BenchShell(props: BenchShellProps) {
  const { sentence, numbers, tiller, cautions, isChanged, onSeen, layout, children, side } = props;
  return (
    <div className={classes.shell}>
      {isChanged ? (
        <div className={classes.changed} role="alert">
          <Mark kind="attention">
            The advice has changed: something else was recorded for this bow. This is the new one.
          </Mark>
          <BigButton onClick={onSeen}>I have seen it</BigButton>
        </div>
      ) : null}
      <p className={classes.sentence} aria-live="polite">
        {sentence}
      </p>
      <div className={classes[layout]}>
        <div className={classes.facts}>
          <BigNumbers {...numbers} />
          {tiller === null ? null : <p className={classes.tiller}>{tiller}</p>}
          {cautions.map((text) => (
            <p key={text} className={classes.caution}>
              <Mark kind="attention">{text}</Mark>
            </p>
          ))}
        </div>
        <div className={classes.work}>{children}</div>
        <div className={classes.side}>{side}</div>
      </div>
    </div>
  );
}
