import { Button } from '@mantine/core';
import { type KeyboardEvent, useEffect, useRef, useState } from 'react';
import { api } from '../../api/client.ts';
import { useCommand } from '../../api/command.ts';
import { useWho } from '../../api/who.ts';
import { CommandError } from '../../parts/command-error.tsx';
import { errorsUnder } from '../../parts/field-errors.ts';
import { EmptyNote } from '../../parts/notes.tsx';
import { Page } from '../../parts/page.tsx';
import { Panel } from '../../parts/panel.tsx';
import { JobInputs } from '../orders/facts/job-inputs.tsx';
import { ArrivalSection } from './arrival-section.tsx';
import { BowSection } from './bow-section.tsx';
import { DraftList } from './draft-list.tsx';
import classes from './intake.module.css';
import { RouteSection } from './route-section.tsx';
import { SavedNote } from './saved-note.tsx';
import { formErrors, intakeErrors, submitInput } from './submit-input.ts';
import { TakenIn, type TakenInOrder } from './taken-in.tsx';
import { useDraft } from './use-draft.ts';
import { useShootingStyle } from './use-shooting-style.ts';
import { WhoSection } from './who-section.tsx';

/** Takes in a request: who, which bow, what, and where it is now. Kept as a draft while typing. */
export function IntakePage() {
  const who = useWho();
  if (who?.role === 'bench') {
    return (
      <Page title="Intake">
        <EmptyNote title="The office takes in requests.">
          <p>A box that came unannounced: tell the office, or ask the owner to change your role.</p>
        </EmptyNote>
      </Page>
    );
  }
  return <IntakeBody />;
}

function IntakeBody() {
  const [taken, setTaken] = useState<TakenInOrder | null>(null);
  const draft = useDraft();
  const next = () => {
    setTaken(null);
    draft.startNew();
  };
  return (
    <Page
      title="Intake"
      actions={
        taken === null ? (
          <>
            <SavedNote saving={draft.saving} onAgain={() => void draft.save()} />
            <Button variant="default" onClick={draft.startNew}>
              Start an empty one
            </Button>
          </>
        ) : null
      }
    >
      <div className={classes.form}>
        {taken === null ? (
          <>
            <DraftList currentId={draft.id} onResume={draft.resume} />
            <RequestForm key={draft.id} draft={draft} onTaken={setTaken} />
          </>
        ) : (
          <TakenIn order={taken} onNext={next} />
        )}
      </div>
    </Page>
  );
}

interface RequestFormProps {
  draft: ReturnType<typeof useDraft>;
  onTaken: (order: TakenInOrder) => void;
}

function RequestForm({ draft, onTaken }: RequestFormProps) {
  const { form, edit } = draft;
  const body = useRef<HTMLFormElement>(null);
  const [isTried, setTried] = useState(false);
  const style = useShootingStyle(form);
  useEffect(() => {
    // After the screen's heading took it: typing may begin at once.
    const frame = requestAnimationFrame(() =>
      body.current?.querySelector<HTMLElement>('input')?.focus(),
    );
    return () => cancelAnimationFrame(frame);
  }, []);
  const submit = useCommand(api.intake.submit, {
    onDone: ({ id, number, missing }) => {
      draft.finish();
      onTaken({
        id,
        number,
        estimateCents: form.job.estimateCents,
        missing: form.startsAt === 'arrived' ? missing : null,
      });
    },
  });
  const wrong = intakeErrors(form);
  const errors = isTried ? { ...formErrors(submit.details), ...wrong } : {};
  const send = async () => {
    setTried(true);
    if (Object.keys(wrong).length === 0) await submit.run(submitInput(form, draft.id));
    requestAnimationFrame(() =>
      body.current?.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus(),
    );
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== 'Enter' || !(event.ctrlKey || event.metaKey)) return;
    event.preventDefault();
    void send();
  };
  const section = { form, edit, errors };
  return (
    <form
      ref={body}
      className={classes.form}
      aria-label="Request"
      noValidate
      onKeyDown={onKeyDown}
      // Enter alone ends no request: it belongs to the search and to the lines of the notes.
      onSubmit={(event) => event.preventDefault()}
    >
      <WhoSection {...section} />
      <BowSection {...section} />
      <Panel title="What shall be done">
        <div className={classes.stack}>
          <JobInputs
            job={form.job}
            set={(part) => edit({ job: { ...form.job, ...part } })}
            errors={errorsUnder(errors, 'job')}
            style={style}
          />
        </div>
      </Panel>
      <ArrivalSection {...section} />
      <RouteSection {...section} />
      <CommandError command={submit} />
      {isTried && Object.keys(wrong).length > 0 ? (
        <p className={classes.error} role="alert">
          Something is missing above: {Object.keys(wrong).length}{' '}
          {Object.keys(wrong).length === 1 ? 'field is' : 'fields are'} marked.
        </p>
      ) : null}
      <div className={classes.end}>
        <Button size="md" loading={submit.busy} onClick={() => void send()}>
          Take in the request
        </Button>
        <span className={classes.quiet}>or press Ctrl+Enter</span>
      </div>
    </form>
  );
}
