import { type ReactNode, useEffect, useRef } from 'react';
import { BigButton } from './big-button.tsx';
import classes from './read-back.module.css';

interface ReadBackProps {
  /** `47.8 lb at 28 in.` */
  said: ReactNode;
  /** Smaller, under it. */
  more?: ReactNode;
  /** Why it was not saved; under the answers, so that they stay where they are. */
  notice?: ReactNode;
  question?: string;
  yes?: string;
  no?: string;
  busy?: boolean;
  onYes: () => void;
  onNo: () => void;
}

/** What is about to be saved, large enough to be read from where the hands are. */
export function ReadBack(props: ReadBackProps) {
  const { said, more, question = 'Right?', yes = 'Yes, save', no = 'No', busy = false } = props;
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  return (
    <section className={classes.box} aria-label="Read back">
      <h2 className={classes.said} ref={heading} tabIndex={-1}>
        {said} {question}
      </h2>
      {more === undefined ? null : <div className={classes.more}>{more}</div>}
      <div className={classes.answers}>
        <BigButton kind="main" keyHint="Enter" disabled={busy} onClick={props.onYes}>
          {busy ? 'Saving ...' : yes}
        </BigButton>
        <BigButton keyHint="Backspace" disabled={busy} onClick={props.onNo}>
          {no}
        </BigButton>
      </div>
      {props.notice}
    </section>
  );
}
