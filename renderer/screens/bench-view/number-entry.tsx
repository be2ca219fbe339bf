import type { ReactNode } from 'react';
import { Mark } from '../../parts/mark.tsx';
import classes from './number-entry.module.css';
import { NumberPad } from './number-pad.tsx';

interface NumberEntryProps {
  /** What is on the left: what is waited for, what came so far. */
  children: ReactNode;
  trouble: string | null;
  /** What went wrong with the whole entry; beside the pad, so that the main button stays in sight. */
  notice?: ReactNode;
  onKey: (key: string) => void;
  /** The main button under the pad. */
  main: ReactNode;
}

/** Entry of numbers: what is asked beside a number pad, for landscape and portrait. */
export function NumberEntry({ children, trouble, notice, onKey, main }: NumberEntryProps) {
  return (
    <div className={classes.entry}>
      <div className={classes.asked}>
        <div role="alert" className={classes.trouble}>
          {trouble === null ? null : <Mark kind="stop">{trouble}</Mark>}
        </div>
        {notice}
        {children}
      </div>
      <div className={classes.keys}>
        <NumberPad onKey={onKey} />
        {main}
      </div>
    </div>
  );
}
