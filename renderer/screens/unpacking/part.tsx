import { Button } from '@mantine/core';
import { type ReactNode, useRef } from 'react';
import { CommandError } from '../../parts/command-error.tsx';
import { Mark } from '../../parts/mark.tsx';
import { Panel } from '../../parts/panel.tsx';
import { fieldLabels, writtenText } from './arrival-fields.ts';
import classes from './unpacking.module.css';
import { useReportUnsaved } from './unsaved.tsx';
import type { ArrivalPart } from './use-arrival-part.ts';

interface TableStepProps {
  title: string;
  /** What the arrival check asks of this step is recorded. */
  isDone?: boolean;
  children: ReactNode;
}

/** One step at the table. */
export function TableStep({ title, isDone = false, children }: TableStepProps) {
  return (
    <Panel title={title} actions={isDone ? <Mark kind="done">Done</Mark> : null}>
      <div className={classes.step}>{children}</div>
    </Panel>
  );
}

interface SavedFormProps {
  /** Name of the step, as its heading says it. */
  title: string;
  saveLabel: string;
  part: ArrivalPart;
  children: ReactNode;
}

/** Fields of a step with their own save button; the first wrong one takes the focus. */
export function SavedForm({ title, saveLabel, part, children }: SavedFormProps) {
  const form = useRef<HTMLFormElement>(null);
  useReportUnsaved(title, part.isUnsaved);
  return (
    <form
      ref={form}
      className={classes.step}
      aria-label={title}
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        part.save();
        requestAnimationFrame(() =>
          form.current?.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus(),
        );
      }}
    >
      {children}
      <CommandError command={part.command} />
      <Clashes part={part} />
      <div className={classes.buttons}>
        <Button
          type="submit"
          h={56}
          size="md"
          variant={part.isUnsaved ? 'filled' : 'default'}
          loading={part.command.busy}
        >
          {saveLabel}
        </Button>
        <span aria-live="polite">
          {part.isUnsaved ? <Mark kind="attention">Not saved yet</Mark> : null}
        </span>
      </div>
    </form>
  );
}

/** What somebody else wrote into the same fields meanwhile; saving writes over it. */
function Clashes({ part }: { part: ArrivalPart }) {
  if (part.clashes.length === 0) return null;
  return (
    <div className={classes.caution} role="alert">
      <Mark kind="attention">Somebody else wrote here in the meantime. Saving writes over it:</Mark>
      <ul className={classes.list}>
        {part.clashes.map((key) => (
          <li key={key} className={classes.text}>
            {fieldLabels[key]}: {writtenText(part.stored[key])}
          </li>
        ))}
      </ul>
      <Button variant="default" mt="sm" onClick={part.dropTyped}>
        Keep theirs
      </Button>
    </div>
  );
}
