import { Mark } from '../../parts/mark.tsx';
import { ErrorNote } from '../../parts/notes.tsx';
import type { HandOver } from './hand-over.ts';
import classes from './papers.module.css';

/** Says where the paper went, and how to get it where the browser stood in the way. */
export function HandOverNote({ result }: { result: HandOver | null }) {
  if (result === null) return null;
  if (result.state === 'failed') return <ErrorNote error={result.sentence} />;
  return (
    <p className={classes.message} role="status">
      {result.state === 'opened' ? (
        <Mark kind="done">Opened in the viewer: print it from there, at actual size.</Mark>
      ) : null}
      {result.state === 'saved' ? (
        <>
          <Mark kind="done">Saved among the downloads.</Mark>{' '}
          <a href={result.url} download={result.name}>
            {result.name}
          </a>
        </>
      ) : null}
      {result.state === 'blocked' ? (
        <>
          <Mark kind="attention">The browser blocked the new tab.</Mark>{' '}
          <a href={result.url} target="_blank" rel="noreferrer">
            Open {result.name} to print it
          </a>
        </>
      ) : null}
    </p>
  );
}
