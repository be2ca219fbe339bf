import { Button } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { Attachment } from '../../../shared/contract/attachments.ts';
import { api } from '../../api/client.ts';
import { sentenceOf } from '../../api/errors.ts';
import { type HandOver, handToViewer, openTab } from '../../screens/papers/hand-over.ts';
import { BusyNote, ErrorNote } from '../notes.tsx';
import { DocumentSign } from './photo-tile.tsx';
import classes from './photos.module.css';

/** A message is read here as the plain text it is, its attachments as the letters they came in. */
const mostLetters = 200_000;

/** A document in the large view: text to read, a PDF to open. */
export function DocumentView({ file }: { file: Attachment }) {
  return file.mediaType === 'application/pdf' ? <Pdf file={file} /> : <PlainText file={file} />;
}

function PlainText({ file }: { file: Attachment }) {
  const query = useQuery({
    queryKey: ['attachment-text', file.id],
    queryFn: async () => {
      const original = await api.attachments.image({ id: file.id, size: 'original' });
      return (await original.text()).slice(0, mostLetters);
    },
    staleTime: 'static',
  });
  if (query.isError) {
    return <ErrorNote error={query.error} onAgain={() => void query.refetch()} />;
  }
  if (query.data === undefined) return <BusyNote />;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reached by keyboard.
    <pre className={classes.text} tabIndex={0}>
      {query.data}
    </pre>
  );
}

function Pdf({ file }: { file: Attachment }) {
  const [busy, setBusy] = useState(false);
  const [result, setResult] = useState<HandOver | null>(null);
  const open = async () => {
    // Opened while the click still counts as one.
    const tab = openTab();
    setBusy(true);
    try {
      const original = await api.attachments.image({ id: file.id, size: 'original' });
      setResult(await handToViewer(original, tab));
    } catch (error) {
      tab?.close();
      setResult({ state: 'failed', sentence: sentenceOf(error) });
    } finally {
      setBusy(false);
    }
  };
  return (
    <div className={classes.pdf}>
      <DocumentSign file={file} />
      <Button loading={busy} onClick={() => void open()}>
        Open
      </Button>
      {result?.state === 'failed' ? <ErrorNote error={result.sentence} /> : null}
      {result?.state === 'blocked' ? (
        <a href={result.url} target="_blank" rel="noreferrer">
          The browser blocked the new tab: open {result.name}
        </a>
      ) : null}
    </div>
  );
}
