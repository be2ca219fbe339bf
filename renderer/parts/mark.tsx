import type { ReactNode } from 'react';
import classes from './mark.module.css';

export type MarkKind = 'attention' | 'stop' | 'done';

const shapes: Record<MarkKind, ReactNode> = {
  attention: (
    <path
      d="M10 3 18 17H2Z"
      fill="none"
      stroke="currentColor"
      strokeWidth="2.4"
      strokeLinejoin="round"
    />
  ),
  stop: <path d="M6.5 2h7L18 6.5v7L13.5 18h-7L2 13.5v-7Z" fill="currentColor" />,
  done: (
    <path
      d="m3 11 5 5L18 5"
      fill="none"
      stroke="currentColor"
      strokeWidth="2.8"
      strokeLinecap="round"
    />
  ),
};

/** A state as shape and word together: open triangle, solid octagon or tick, never colour alone. */
export function Mark({ kind, children }: { kind: MarkKind; children: ReactNode }) {
  return (
    <span className={`${classes.mark} ${classes[kind]}`}>
      <svg className={classes.shape} viewBox="0 0 20 20" aria-hidden="true" focusable="false">
        {shapes[kind]}
      </svg>
      <span>{children}</span>
    </span>
  );
}
