import { type ReactNode, useEffect, useRef } from 'react';
import classes from './page.module.css';

interface PageProps {
  title: string;
  /** Shown under the window's name when it differs from the title. */
  windowTitle?: string;
  actions?: ReactNode;
  /** Takes exactly the height there is; its body scrolls by itself. */
  fill?: boolean;
  children: ReactNode;
}

/** One screen: its only h1, its actions, its body. Moves the focus to the heading on arrival. */
export function Page({ title, windowTitle = title, actions, fill = false, children }: PageProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    heading.current?.focus({ preventScroll: true });
  }, []);
  useEffect(() => {
    document.title = `${windowTitle} - Tillermark`;
  }, [windowTitle]);
  return (
    <div className={`${classes.page} ${fill ? classes.fill : ''}`}>
      <div className={classes.head}>
        <h1 className={classes.title} ref={heading} tabIndex={-1}>
          {title}
        </h1>
        <div className={classes.actions}>{actions}</div>
      </div>
      {children}
    </div>
  );
}
