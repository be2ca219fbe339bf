import type { ReactNode } from 'react';
import classes from './fields.module.css';

/** Form fields side by side where there is room, one under the other where there is not. */
export function FieldGrid({ children }: { children: ReactNode }) {
  return <div className={classes.grid}>{children}</div>;
}

/** A field over the full width of the grid. */
export function WideField({ children }: { children: ReactNode }) {
  return <div className={classes.wide}>{children}</div>;
}
