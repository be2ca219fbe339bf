import type { ReactNode } from 'react';
import { Mark, type MarkKind } from '../../parts/mark.tsx';
import classes from './weight-bench.module.css';

interface BannerProps {
  kind: MarkKind;
  title: string;
  /** One sentence each. */
  why: readonly string[];
  actions: ReactNode;
}

/** What must be known before anything else on the screen is read. */
export function Banner({ kind, title, why, actions }: BannerProps) {
  return (
    <div className={`${classes.banner} ${kind === 'done' ? classes.calm : ''}`} role="status">
      <div>
        <Mark kind={kind}>{title}</Mark>
        {why.length === 0 ? null : (
          <ul>
            {why.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        )}
      </div>
      {actions}
    </div>
  );
}
