import { Button } from '@mantine/core';
import { useRef } from 'react';
import { attachmentEndings, attachmentMediaTypes } from '../../../shared/attachments.ts';
import classes from './photos.module.css';

/** Kinds and endings: file choosers know the kind of a saved message only by its ending. */
const accept = [
  ...attachmentMediaTypes,
  ...attachmentMediaTypes.flatMap((type) => attachmentEndings[type].map((end) => `.${end}`)),
].join(',');

interface AddPhotosProps {
  onFiles: (files: File[]) => void;
  isOver: boolean;
}

/** The button that chooses files, and what else works. */
export function AddPhotos({ onFiles, isOver }: AddPhotosProps) {
  const chooser = useRef<HTMLInputElement>(null);
  return (
    <div className={classes.adding}>
      <Button variant="default" onClick={() => chooser.current?.click()}>
        Add photographs
      </Button>
      <span className={classes.quiet}>
        {isOver ? 'Let go to add them here.' : 'Or drag files here, or paste them.'}
      </span>
      <input
        ref={chooser}
        type="file"
        multiple
        accept={accept}
        hidden
        onChange={(event) => {
          const { files } = event.currentTarget;
          if (files !== null) onFiles([...files]);
          // The same file may be chosen again after it was refused.
          event.currentTarget.value = '';
        }}
      />
    </div>
  );
}
