import { useEffect, useRef, useState } from 'react';
import { BusyNote, ErrorNote } from '../../parts/notes.tsx';
import classes from './papers.module.css';
import { type DrawnPage, drawPages } from './pdf-pages.ts';

function PaperPage({ page, title, count }: { page: DrawnPage; title: string; count: number }) {
  const frame = useRef<HTMLDivElement>(null);
  useEffect(() => {
    frame.current?.replaceChildren(page.canvas);
  }, [page]);
  return (
    <figure className={classes.page}>
      <div
        ref={frame}
        role="img"
        aria-label={`${title}, page ${page.number} of ${count}, as it will come out`}
      />
      <figcaption className={classes.words}>{page.words}</figcaption>
    </figure>
  );
}

interface PaperPreviewProps {
  file: Blob;
  title: string;
}

/** The paper itself, drawn from the very file that will be handed over. */
export function PaperPreview({ file, title }: PaperPreviewProps) {
  const [pages, setPages] = useState<DrawnPage[]>([]);
  const [state, setState] = useState<'drawing' | 'done' | 'failed'>('drawing');
  useEffect(() => {
    const stop = new AbortController();
    setState('drawing');
    // The old pages stay until new ones are drawn: a paper made anew must not flicker.
    const drawn: DrawnPage[] = [];
    const draw = async () => {
      for await (const page of drawPages(file, stop.signal)) {
        if (stop.signal.aborted) return;
        drawn.push(page);
        setPages([...drawn]);
      }
    };
    draw().then(
      () => !stop.signal.aborted && setState('done'),
      () => !stop.signal.aborted && setState('failed'),
    );
    return () => stop.abort();
  }, [file]);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reached by keyboard.
    <section className={classes.pages} tabIndex={0} aria-label={`Pages of ${title}`}>
      {pages.map((page) => (
        <PaperPage key={page.number} page={page} title={title} count={pages.length} />
      ))}
      {state === 'drawing' ? <BusyNote>Drawing the paper ...</BusyNote> : null}
      {state === 'failed' ? (
        <ErrorNote error="The preview could not be drawn. Save the paper and look at the file." />
      ) : null}
    </section>
  );
}
