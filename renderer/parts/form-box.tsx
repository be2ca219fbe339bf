import { Button } from '@mantine/core';
import { type ReactNode, useEffect, useRef } from 'react';
import { CommandError } from './command-error.tsx';
import classes from './form-box.module.css';

interface FormBoxProps {
  title: string;
  submitLabel: string;
  onSubmit: () => void;
  onCancel: () => void;
  command: Parameters<typeof CommandError>[0]['command'];
  /** Changes when the form is asked for again: it then comes back into view. */
  times?: number;
  /** Inside a dialog, which has a frame of its own. */
  plain?: boolean;
  /** The dialog says the title already. */
  hideTitle?: boolean;
  /**
   * What is worked out while the form is filled in. It stands beside the buttons, or under them:
   * whenever it comes and however long it is, they stay under the hand.
   */
  answer?: ReactNode;
  children: ReactNode;
}

const firstField = 'input:not([type=hidden]):not(:disabled), textarea, select';

/** A form opened in place. It comes into view with the focus on its first field. */
export function FormBox(props: FormBoxProps) {
  const {
    title,
    submitLabel,
    onSubmit,
    onCancel,
    command,
    times = 1,
    plain = false,
    hideTitle = false,
    answer,
    children,
  } = props;
  const box = useRef<HTMLFormElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: each asking brings it into view.
  useEffect(() => {
    const frame = requestAnimationFrame(() => {
      box.current?.scrollIntoView({ block: 'nearest' });
      box.current?.querySelector<HTMLElement>(firstField)?.focus();
    });
    return () => cancelAnimationFrame(frame);
  }, [times]);
  return (
    <form
      ref={box}
      className={plain ? classes.plain : classes.box}
      aria-label={title}
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        // A dialog opened from inside a form would otherwise submit it too.
        event.stopPropagation();
        onSubmit();
        requestAnimationFrame(() =>
          box.current?.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus(),
        );
      }}
    >
      {hideTitle ? null : <h3 className={classes.title}>{title}</h3>}
      {children}
      <CommandError command={command} />
      <div className={classes.foot}>
        <div className={classes.buttons}>
          <Button type="submit" loading={command.busy}>
            {submitLabel}
          </Button>
          <Button variant="default" onClick={onCancel}>
            Cancel
          </Button>
        </div>
        {answer === undefined ? null : <div className={classes.answer}>{answer}</div>}
      </div>
    </form>
  );
}
