import type { ReactNode } from 'react';
import { Link } from 'wouter';
import classes from './rows.module.css';

export function Rows({ children, label }: { children: ReactNode; label: string }) {
  return (
    <ul className={classes.rows} aria-label={label}>
      {children}
    </ul>
  );
}

interface LinkRowProps {
  href: string;
  title: string;
  line?: string;
  side?: ReactNode;
}

/** One record of a list; the whole row leads to it. */
export function LinkRow({ href, title, line = '', side }: LinkRowProps) {
  return (
    <li>
      <Link href={href} className={classes.row ?? ''}>
        <span className={classes.title}>{title}</span>
        {line === '' ? null : <span className={classes.line}>{line}</span>}
        {side == null ? null : <span className={classes.side}>{side}</span>}
      </Link>
    </li>
  );
}
