import { type ReactNode, useState } from 'react';
import classes from './fold.module.css';

interface FoldProps {
  title: string;
  /** What is inside, in a few words, beside the title while it is folded. */
  said?: string;
  /** Open until somebody folds it. */
  startsOpen?: boolean;
  /** Something inside is wrong: it opens and stays open. */
  isWrong?: boolean;
  /** Inside a list that draws its own rules. */
  hasRule?: boolean;
  children: ReactNode;
}

/** One group of a long form that can be folded away. */
export function Fold({
  title,
  said = '',
  startsOpen = false,
  isWrong = false,
  hasRule = true,
  children,
}: FoldProps) {
  const [isOpen, setOpen] = useState(startsOpen);
  const open = isOpen || isWrong;
  return (
    <details
      className={`${classes.fold} ${hasRule ? classes.rule : ''}`}
      open={open}
      onToggle={(event) => setOpen(event.currentTarget.open)}
    >
      <summary className={classes.summary}>
        <span className={classes.title}>{title}</span>
        {isWrong ? <span className={classes.wrong}>Look here</span> : null}
        {open || said === '' ? null : <span className={classes.said}>{said}</span>}
      </summary>
      <div className={classes.body}>{children}</div>
    </details>
  );
}
