import { Button, Loader } from '@mantine/core';
import { Mark } from '../mark.tsx';
import { sizeText } from '../save-file.ts';
import classes from './photos.module.css';
import type { Upload, Uploads } from './uploads.ts';

function UploadState({ upload }: { upload: Upload }) {
  switch (upload.state) {
    case 'waiting':
      return <span className={classes.quiet}>Waiting, {sizeText(upload.file.size)}</span>;
    case 'adding':
      return (
        <span className={classes.quiet}>
          <Loader size="xs" mr={8} aria-hidden="true" />
          Adding, {sizeText(upload.file.size)} ...
        </span>
      );
    case 'there-already':
      return <Mark kind="done">It was here already</Mark>;
    case 'failed':
      return <Mark kind="stop">{upload.error ?? 'It was not added.'}</Mark>;
  }
}

/** Files on their way in, and those that were refused, each with what to do. */
export function UploadRows({ uploads }: { uploads: Uploads }) {
  return (
    <ul className={classes.uploads} aria-live="polite" aria-label="Files being added">
      {uploads.list.map((upload) => (
        <li key={upload.commandId} className={classes.upload}>
          {upload.error?.includes(upload.file.name) ? null : (
            <span className={classes.name}>{upload.file.name}</span>
          )}
          <UploadState upload={upload} />
          {upload.state === 'failed' || upload.state === 'there-already' ? (
            <span className={classes.buttons}>
              {upload.mayRetry ? (
                <Button
                  variant="default"
                  aria-label={`Try again: ${upload.file.name}`}
                  onClick={() => uploads.again(upload.commandId)}
                >
                  Try again
                </Button>
              ) : null}
              <Button
                variant="subtle"
                aria-label={`Dismiss: ${upload.file.name}`}
                onClick={() => uploads.dismiss(upload.commandId)}
              >
                Dismiss
              </Button>
            </span>
          ) : null}
        </li>
      ))}
    </ul>
  );
}
