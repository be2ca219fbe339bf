import { type ReactNode, useEffect, useRef } from 'react';
import classes from './stop-screen.module.css';

interface StopScreenProps {
  /** In capitals: `STOP - SAND ONLY`. */
  words: string;
  /** Why, and what to do, in a sentence or two. */
  children: ReactNode;
  actions?: ReactNode;
  /** A stop bars the way; a mark only ends the cutting. */
  kind: 'stop' | 'attention';
}

/** A stop that fills the screen. The shape stands beside the words: colour says nothing alone. */
export function StopScreen({ words, children, actions, kind }: StopScreenProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  return (
    <section
      className={`${classes.screen} ${kind === 'stop' ? classes.barring : classes.attention}`}
      aria-label={words}
    >
      <svg className={classes.shape} viewBox="0 0 20 20" aria-hidden="true" focusable="false">
        {kind === 'stop' ? (
          <path d="M6.5 2h7L18 6.5v7L13.5 18h-7L2 13.5v-7Z" fill="currentColor" />
        ) : (
          <path
            d="M10 3 18 17H2Z"
            fill="none"
            stroke="currentColor"
            strokeWidth="2.4"
            strokeLinejoin="round"
          />
        )}
      </svg>
      <h2 className={classes.words} ref={heading} tabIndex={-1}>
        {words}
      </h2>
      <div className={classes.why}>{children}</div>
      {actions === undefined ? null : <div className={classes.actions}>{actions}</div>}
    </section>
  );
}
