import { type ReactNode, useEffect } from 'react';
import classes from './start-page.module.css';

/** A screen before the frame: one question or one state, nothing else. */
export function StartPage({ title, children }: { title: string; children: ReactNode }) {
  useEffect(() => {
    document.title = `${title} - Tillermark`;
  }, [title]);
  return (
    <main className={classes.page}>
      <p className={classes.brand}>Tillermark</p>
      <h1 className={classes.title}>{title}</h1>
      <div className={classes.body}>{children}</div>
    </main>
  );
}
