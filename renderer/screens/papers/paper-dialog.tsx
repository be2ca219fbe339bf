import { Button, Select } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { Paper } from '../../../shared/contract/papers.ts';
import { paperChoices } from '../../../shared/papers.ts';
import { api, orpc } from '../../api/client.ts';
import { useCommand } from '../../api/command.ts';
import { CommandError } from '../../parts/command-error.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { BusyNote, ErrorNote } from '../../parts/notes.tsx';
import { CompareNote } from './compare-note.tsx';
import { type HandOver, handToViewer, openTab, saveFile } from './hand-over.ts';
import { HandOverNote } from './hand-over-note.tsx';
import { PaperPreview } from './paper-preview.tsx';
import { copyLabels, formatLabels } from './paper-words.ts';
import classes from './papers.module.css';

interface PaperDialogProps {
  kind: Paper['kind'];
  /** None where it is about a bow, a lot or a batch alone. */
  orderId: string | null;
  number: string;
  /** What it is made for, where not for the order as a whole. */
  aboutId?: string | null;
  /** The paper that is made again, in its size and copy. */
  again?: Pick<Paper, 'id' | 'format' | 'copy'>;
  onIssued: () => void;
  onClose: () => void;
}

/** Shows the paper as it comes out of the order now; Print and Save make it and record it. */
export function PaperDialog(props: PaperDialogProps) {
  const { kind, number, onClose } = props;
  const shop = useQuery(orpc.shop.get.queryOptions());
  return (
    <Dialog onClose={onClose} size={900} title={`${paperChoices[kind].label} ${number}`}>
      {shop.isError ? (
        <ErrorNote error={shop.error} onAgain={() => void shop.refetch()} />
      ) : shop.data === undefined ? (
        <BusyNote />
      ) : (
        <PaperBody {...props} usual={[shop.data.paperFormat, shop.data.tagFormat]} />
      )}
    </Dialog>
  );
}

function PaperBody({
  kind,
  orderId,
  number,
  aboutId = null,
  again,
  onIssued,
  usual,
}: PaperDialogProps & { usual: readonly Paper['format'][] }) {
  const { formats, copies } = paperChoices[kind];
  const [format, setFormat] = useState(
    again?.format ?? formats.find((each) => usual.includes(each)) ?? formats[0],
  );
  const [copy, setCopy] = useState(again?.copy ?? copies[0]);
  const [result, setResult] = useState<HandOver | null>(null);
  const issue = useCommand(api.papers.issue, { onDone: onIssued });
  const choice = { orderId, aboutId, kind, format, copy };
  const preview = useQuery({
    ...orpc.papers.preview.queryOptions({ input: choice }),
    // Drawn for this look only: the order may change before the next one.
    staleTime: Number.POSITIVE_INFINITY,
    gcTime: 0,
  });

  const print = async () => {
    const tab = openTab();
    const file = await issue.run({ ...choice, action: 'printed' });
    if (file === undefined) tab?.close();
    else setResult(await handToViewer(file, tab));
  };
  const save = async () => {
    const file = await issue.run({ ...choice, action: 'saved' });
    if (file !== undefined) setResult(saveFile(file));
  };
  const title = `${paperChoices[kind].label} ${number}`;
  return (
    <>
      <div className={classes.bar}>
        <Select
          label="Size"
          data={formats.map((value) => ({ value, label: formatLabels[value] }))}
          value={format}
          onChange={(value) => value && setFormat(value)}
        />
        <Select
          label="Copy"
          data={copies.map((value) => ({ value, label: copyLabels[value] }))}
          value={copy}
          onChange={(value) => value && setCopy(value)}
        />
        <Button loading={issue.busy} disabled={!preview.isSuccess} onClick={() => void print()}>
          Print
        </Button>
        <Button
          variant="default"
          loading={issue.busy}
          disabled={!preview.isSuccess}
          onClick={() => void save()}
        >
          Save
        </Button>
      </div>
      {again === undefined ? null : <CompareNote id={again.id} />}
      <CommandError command={issue} />
      <HandOverNote result={result} />
      {preview.isPending ? <BusyNote>Making the paper ...</BusyNote> : null}
      {preview.isError ? (
        <ErrorNote error={preview.error} onAgain={() => void preview.refetch()} />
      ) : null}
      {preview.data === undefined ? null : <PaperPreview file={preview.data} title={title} />}
    </>
  );
}
