import { useLocalStorage } from '@mantine/hooks';
import { IconLayoutSidebarLeftCollapse, IconLayoutSidebarLeftExpand } from '@tabler/icons-react';
import { Link, useLocation } from 'wouter';
import { useWho } from '../api/who.ts';
import classes from './frame.module.css';
import { screenOf, screensFor } from './screens.ts';

/** The screens by name; narrow, it keeps a word under each icon. */
export function Rail() {
  const [path] = useLocation();
  const [narrow, setNarrow] = useLocalStorage({ key: 'tillermark-rail', defaultValue: false });
  const role = useWho()?.role ?? null;
  const current = screenOf(path);
  const Fold = narrow ? IconLayoutSidebarLeftExpand : IconLayoutSidebarLeftCollapse;
  return (
    <nav className={`${classes.rail} ${narrow ? classes.narrow : ''}`} aria-label="Screens">
      <div className={classes.brand}>Tillermark</div>
      <ul className={classes.links}>
        {screensFor(role).map(({ href, label, short, icon: Icon }) => (
          <li key={href}>
            <Link
              href={href}
              className={classes.link ?? ''}
              aria-current={href === current ? 'page' : undefined}
            >
              <Icon size={22} aria-hidden="true" />
              {narrow || short === label ? (
                short
              ) : (
                <>
                  <span className={classes.long}>{label}</span>
                  <span className={classes.short}>{short}</span>
                </>
              )}
            </Link>
          </li>
        ))}
      </ul>
      <button
        type="button"
        className={`${classes.link} ${classes.collapse}`}
        onClick={() => setNarrow(!narrow)}
      >
        <Fold size={22} aria-hidden="true" />
        {narrow ? 'Widen' : 'Narrow'}
      </button>
    </nav>
  );
}
