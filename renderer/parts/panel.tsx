import type { ReactNode } from 'react';
import classes from './panel.module.css';

interface PanelProps {
  title: string;
  id?: string;
  actions?: ReactNode;
  children: ReactNode;
}

/** One titled block of a screen. */
export function Panel({ title, id, actions, children }: PanelProps) {
  return (
    <section className={classes.panel} aria-label={title} id={id}>
      <div className={classes.head}>
        <h2 className={classes.title}>{title}</h2>
        {actions}
      </div>
      {children}
    </section>
  );
}
