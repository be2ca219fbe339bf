import { Button } from '@mantine/core';
import { useState } from 'react';
import type { Attachment } from '../../../shared/contract/attachments.ts';
import { api } from '../../api/client.ts';
import { Mark } from '../mark.tsx';
import { ErrorNote } from '../notes.tsx';
import { saveFile } from '../save-file.ts';
import { isPhoto } from './photo-words.ts';
import classes from './photos.module.css';

type Which = 'copy' | 'original';

/** Saves a copy that may leave the shop, or the file as it came. */
export function PhotoSaving({ file }: { file: Attachment }) {
  const [busy, setBusy] = useState<Which | null>(null);
  const [error, setError] = useState<unknown>(null);
  const save = async (which: Which) => {
    setBusy(which);
    setError(null);
    try {
      const { id } = file;
      saveFile(
        which === 'copy'
          ? await api.attachments.copyToSend({ id })
          : await api.attachments.image({ id, size: 'original' }),
      );
    } catch (thrown) {
      setError(thrown);
    } finally {
      setBusy(null);
    }
  };
  const canCopy = isPhoto(file) && file.struckReason === null;
  return (
    <>
      {file.hasLocation ? (
        <Mark kind="attention">
          This photograph says where it was taken. The copy without location does not.
        </Mark>
      ) : null}
      {isPhoto(file) ? null : (
        <p className={classes.quiet}>
          It may carry names or places that one does not see. Read it before it leaves the shop.
        </p>
      )}
      <div className={classes.buttons}>
        {canCopy ? (
          <Button loading={busy === 'copy'} onClick={() => void save('copy')}>
            Save a copy without location
          </Button>
        ) : null}
        <Button
          variant="default"
          loading={busy === 'original'}
          onClick={() => void save('original')}
        >
          {isPhoto(file) ? 'Save the original' : 'Save the file'}
        </Button>
      </div>
      {error === null ? null : <ErrorNote error={error} />}
    </>
  );
}
