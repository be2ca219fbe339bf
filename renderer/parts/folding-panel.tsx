import { type ReactNode, useId } from 'react';
import classes from './folding-panel.module.css';
import panelClasses from './panel.module.css';

interface FoldingPanelProps {
  title: string;
  /** How it stands, in a few words: what a reader gets of it while it is folded. */
  state: string;
  /** What is inside says it better: the state is left out while it is open. */
  saysItself?: boolean;
  isOpen: boolean;
  onToggle: () => void;
  actions?: ReactNode;
  /** Nothing to unfold where it is null: the line says it all. */
  children: ReactNode;
}

/** A titled block of a screen that folds to one line. What was typed inside stays while it is folded. */
export function FoldingPanel(props: FoldingPanelProps) {
  const { title, state, saysItself = false, isOpen, onToggle, actions, children } = props;
  const body = useId();
  const isEmpty = children === null;
  return (
    <section
      className={`${panelClasses.panel} ${isEmpty || !isOpen ? classes.folded : ''}`}
      aria-label={title}
    >
      <div className={classes.head}>
        <div className={classes.line}>
          <h2 className={panelClasses.title}>
            {isEmpty ? (
              <span className={classes.only}>{title}</span>
            ) : (
              <button
                type="button"
                className={classes.toggle}
                aria-expanded={isOpen}
                aria-controls={body}
                onClick={onToggle}
              >
                {title}
              </button>
            )}
          </h2>
          {saysItself && isOpen && !isEmpty ? null : <span className={classes.state}>{state}</span>}
        </div>
        {actions}
      </div>
      {isEmpty ? null : (
        <div id={body} className={classes.body} hidden={!isOpen}>
          {children}
        </div>
      )}
    </section>
  );
}
