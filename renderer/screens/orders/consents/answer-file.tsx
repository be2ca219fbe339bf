import { Button, FileButton, Select } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { api, orpc } from '../../../api/client.ts';
import { useCommand } from '../../../api/command.ts';
import { CommandError } from '../../../parts/command-error.tsx';
import classes from './signature.module.css';

interface AnswerFileProps {
  orderId: string;
  value: string | null;
  onChange: (id: string | null) => void;
  error: string | undefined;
}

/** The message or the signed paper that shows the answer: one of the order's files, or a new one. */
export function AnswerFile({ orderId, value, onChange, error }: AnswerFileProps) {
  const files = useQuery(orpc.attachments.list.queryOptions({ input: { orderId } }));
  const add = useCommand(api.attachments.add, {
    onDone: ({ id }) => {
      void files.refetch();
      onChange(id);
    },
  });
  const choices = (files.data ?? [])
    .filter(({ struckReason }) => struckReason === null)
    .map(({ id, fileName }) => ({ value: id, label: fileName }));
  const attach = (file: File | null) => {
    if (file === null) return;
    const nothing = { bowId: null, findingId: null, incidentId: null, shipmentId: null };
    void add.run({ file, about: 'message', orderId, caption: '', ...nothing });
  };
  return (
    <div className={classes.field}>
      <Select
        w="100%"
        label="File that shows the answer"
        description="The message as .eml or PDF, or a scan of the signed paper."
        placeholder={choices.length === 0 ? 'No file on this order yet' : 'None'}
        clearable
        data={choices}
        value={value}
        error={error ?? (files.isError ? 'The files could not be read.' : undefined)}
        onChange={onChange}
      />
      <FileButton accept=".eml,.pdf,.txt,image/*" onChange={attach}>
        {(props) => (
          <Button variant="default" loading={add.busy} {...props}>
            Attach a file
          </Button>
        )}
      </FileButton>
      <CommandError command={add} />
    </div>
  );
}
