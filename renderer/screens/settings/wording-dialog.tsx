import { Button, Stack, Textarea, TextInput } from '@mantine/core';
import { useDebouncedValue } from '@mantine/hooks';
import { useQuery } from '@tanstack/react-query';
import type { Wording } from '../../../shared/contract/wordings.ts';
import {
  fieldsOf,
  isConsentUse,
  mergeFields,
  subjectMax,
  wordingLabels,
  wordingMax,
  wordingTroubles,
} from '../../../shared/wordings.ts';
import { api, orpc } from '../../api/client.ts';
import { useCommand } from '../../api/command.ts';
import { CommandError } from '../../parts/command-error.tsx';
import { momentText } from '../../parts/days.ts';
import { Dialog } from '../../parts/dialog.tsx';
import { Fold } from '../../parts/fold.tsx';
import { BusyNote, ErrorNote } from '../../parts/notes.tsx';
import { RecordForm } from '../../parts/record-form.tsx';
import classes from './wordings.module.css';

interface WordingDialogProps {
  wording: Wording;
  isOwner: boolean;
  onClose: () => void;
}

type Parts = Pick<Wording, 'use' | 'subject' | 'body'>;

/** One wording: its text, how a customer reads it, and all it ever said. */
export function WordingDialog({ wording, isOwner, onClose }: WordingDialogProps) {
  const { use, version, subject, body } = wording;
  return (
    <Dialog onClose={onClose} size="xl" title={wordingLabels[use]}>
      <Stack>
        {isOwner ? (
          <EditWording wording={wording} onClose={onClose} />
        ) : (
          <Preview use={use} subject={subject} body={body} />
        )}
        <History use={use} now={version} isOwner={isOwner} onClose={onClose} />
      </Stack>
    </Dialog>
  );
}

function EditWording({ wording, onClose }: { wording: Wording; onClose: () => void }) {
  const { use, version } = wording;
  const save = useCommand(api.wordings.save, { onDone: onClose });
  return (
    <RecordForm
      initial={{ subject: wording.subject, body: wording.body }}
      check={(parts) => wordingTroubles(use, parts)}
      command={save}
      action="Save as a new version"
      onCancel={onClose}
      onSave={(parts) => void save.run({ use, version, ...parts })}
    >
      {(value, onChange, errors) => (
        <Stack>
          {isConsentUse(use) ? null : (
            <TextInput
              label="Subject line"
              required
              maxLength={subjectMax}
              autoComplete="off"
              value={value.subject}
              error={errors.subject}
              onChange={(event) => onChange({ ...value, subject: event.currentTarget.value })}
            />
          )}
          <Textarea
            label="Text"
            required
            maxLength={wordingMax}
            autosize
            minRows={8}
            maxRows={20}
            value={value.body}
            error={errors.body}
            onChange={(event) => onChange({ ...value, body: event.currentTarget.value })}
          />
          <Fold title="Fields that are filled in">
            <dl className={classes.fields}>
              {fieldsOf(use).map((name) => (
                <div key={name}>
                  <dt>{`{{${name}}}`}</dt>
                  <dd>{mergeFields[name]}</dd>
                </div>
              ))}
            </dl>
          </Fold>
          <Preview use={use} {...value} />
        </Stack>
      )}
    </RecordForm>
  );
}

/** The text as a customer of an example order reads it. */
function Preview(parts: Parts) {
  const [input] = useDebouncedValue(parts, 300);
  const preview = useQuery({
    ...orpc.wordings.preview.queryOptions({ input }),
    placeholderData: (before) => before,
  });
  return (
    <section aria-label="Preview with an example order">
      <h3 className={classes.head}>Preview with an example order</h3>
      {preview.isError ? (
        <ErrorNote error={preview.error} onAgain={() => void preview.refetch()} />
      ) : preview.data === undefined ? (
        <BusyNote />
      ) : (
        <div className={classes.preview}>
          {preview.data.subject === '' ? null : <strong>{preview.data.subject}</strong>}
          <p className={classes.words}>{preview.data.body}</p>
        </div>
      )}
    </section>
  );
}

interface HistoryProps {
  use: Wording['use'];
  now: number;
  isOwner: boolean;
  onClose: () => void;
}

function History({ use, now, isOwner, onClose }: HistoryProps) {
  const history = useQuery(orpc.wordings.history.queryOptions({ input: { use } }));
  const back = useCommand(api.wordings.backToBuiltIn, { onDone: onClose });
  if (history.isError) {
    return <ErrorNote error={history.error} onAgain={() => void history.refetch()} />;
  }
  if (history.data === undefined) return <BusyNote />;
  return (
    <>
      <Fold title={`Versions (${history.data.length})`}>
        {history.data.map((each) => (
          <Fold
            key={each.version}
            title={each.version === 0 ? 'Built-in text' : `Version ${each.version}`}
            said={each.writtenAt === null ? '' : `${momentText(each.writtenAt)}, ${each.writtenBy}`}
            hasRule={false}
          >
            {each.subject === '' ? null : <strong>{each.subject}</strong>}
            <p className={classes.words}>{each.body}</p>
          </Fold>
        ))}
      </Fold>
      {isOwner && now > 0 ? (
        <div>
          <Button
            variant="default"
            loading={back.busy}
            onClick={() => void back.run({ use, version: now })}
          >
            Back to the built-in text
          </Button>
          <CommandError command={back} />
        </div>
      ) : null}
    </>
  );
}
