import type { ReactNode } from 'react';
import classes from './two-columns.module.css';

interface TwoColumnsProps {
  /** The story, top to bottom. */
  left: ReactNode;
  /** Facts that stay the same. */
  right: ReactNode;
}

export function TwoColumns({ left, right }: TwoColumnsProps) {
  return (
    <div className={classes.columns}>
      <div className={classes.column}>{left}</div>
      <div className={classes.column}>{right}</div>
    </div>
  );
}
