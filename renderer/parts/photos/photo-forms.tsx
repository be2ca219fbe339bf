import { Select, Textarea, TextInput } from '@mantine/core';
import { useQueryClient } from '@tanstack/react-query';
import { type ReactNode, useState } from 'react';
import { attachmentSubjectLabels, attachmentSubjects } from '../../../shared/attachments.ts';
import { type Attachment, attachmentAbout } from '../../../shared/contract/attachments.ts';
import { api, orpc } from '../../api/client.ts';
import { type Command, useCommand } from '../../api/command.ts';
import { CommandError } from '../command-error.tsx';
import { EditButtons } from '../edit-buttons.tsx';
import classes from './photos.module.css';

interface FormProps {
  file: Attachment;
  onDone: () => void;
}

/** A command on a file; the list is read again, also when somebody else was faster. */
function useFileCommand<Input extends { commandId: string }, Output>(
  fn: (input: Input) => Promise<Output>,
  onDone: () => void,
): Command<Input, Output> {
  const queryClient = useQueryClient();
  const readAgain = () => queryClient.invalidateQueries({ queryKey: orpc.attachments.list.key() });
  const command = useCommand(fn, {
    onDone: () => {
      void readAgain();
      onDone();
    },
  });
  return {
    ...command,
    run: async (fields) => {
      const output = await command.run(fields);
      if (output === undefined) void readAgain();
      return output;
    },
  };
}

interface FileFormProps {
  title: string;
  action: string;
  command: Parameters<typeof CommandError>[0]['command'];
  onSubmit: () => void;
  onCancel: () => void;
  children: ReactNode;
}

function FileForm({ title, action, command, onSubmit, onCancel, children }: FileFormProps) {
  return (
    <form
      className={classes.form}
      aria-label={title}
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        // The strip may stand inside a form of its own page.
        event.stopPropagation();
        onSubmit();
      }}
    >
      {children}
      <CommandError command={command} />
      <EditButtons action={action} busy={command.busy} onCancel={onCancel} />
    </form>
  );
}

const subjects = attachmentSubjects.map((value) => ({
  value,
  label: attachmentSubjectLabels[value],
}));

/** What a file shows, in words. */
export function DescribeForm({ file, onDone }: FormProps) {
  const [caption, setCaption] = useState(file.caption);
  const [about, setAbout] = useState(file.about);
  const command = useFileCommand(api.attachments.describe, onDone);
  const { id, rowVersion } = file;
  return (
    <FileForm
      title="Describe"
      action="Save"
      command={command}
      onCancel={onDone}
      onSubmit={() => void command.run({ id, rowVersion, caption, about })}
    >
      <TextInput
        label="Caption"
        placeholder="Upper fade, belly side"
        maxLength={300}
        autoComplete="off"
        data-autofocus
        value={caption}
        error={command.details.caption}
        onChange={(event) => setCaption(event.currentTarget.value)}
      />
      <Select
        label="Shows"
        data={subjects}
        value={about}
        onChange={(value) => setAbout(attachmentAbout.parse(value))}
      />
    </FileForm>
  );
}

/** Takes a file out of the count. It stays to be seen, with the reason. */
export function StrikeForm({ file, onDone }: FormProps) {
  const [reason, setReason] = useState('');
  const [isTried, setTried] = useState(false);
  const command = useFileCommand(api.attachments.strikeOut, onDone);
  const { id, rowVersion } = file;
  const isThin = reason.trim().length < 3;
  return (
    <FileForm
      title="Strike out"
      action="Strike out"
      command={command}
      onCancel={onDone}
      onSubmit={() => {
        setTried(true);
        if (!isThin) void command.run({ id, rowVersion, reason: reason.trim() });
      }}
    >
      <Textarea
        label="Why does it not count?"
        description="It stays here, with the reason."
        required
        maxLength={400}
        value={reason}
        error={isTried && isThin ? 'Give the reason in a few words.' : command.details.reason}
        onChange={(event) => setReason(event.currentTarget.value.replaceAll('\n', ' '))}
      />
    </FileForm>
  );
}
