import { ActionIcon, Modal } from '@mantine/core';
import { useMediaQuery } from '@mantine/hooks';
import { IconChevronLeft, IconChevronRight } from '@tabler/icons-react';
import { useQueryClient } from '@tanstack/react-query';
import { type KeyboardEvent, useEffect } from 'react';
import type { Attachment } from '../../../shared/contract/attachments.ts';
import { BusyNote, ErrorNote } from '../notes.tsx';
import { DocumentView } from './document-view.tsx';
import { PhotoFacts } from './photo-facts.tsx';
import { altOf, isPhoto, kindText } from './photo-words.ts';
import classes from './photos.module.css';
import { pictureQuery, usePicture } from './use-picture.ts';

interface PhotoViewerProps {
  files: readonly Attachment[];
  /** Null while nothing is looked at. */
  shownId: string | null;
  onShow: (id: string | null) => void;
}

function LargePicture({ file }: { file: Attachment }) {
  const { url, error, again } = usePicture(file.id, 'screen');
  if (error !== null) return <ErrorNote error={error} onAgain={again} />;
  if (url === null) return <BusyNote>Reading the photograph ...</BusyNote>;
  return <img className={classes.large} src={url} alt={altOf(file)} />;
}

/** Reads the pictures on both sides, so that the arrows do not wait. */
function useNeighbours(files: readonly Attachment[], at: number): void {
  const queryClient = useQueryClient();
  const near = [files[at - 1], files[at + 1]];
  const ids = near.filter((file) => file !== undefined && isPhoto(file)).map((file) => file?.id);
  const key = ids.join(' ');
  useEffect(() => {
    for (const id of key.split(' ')) {
      if (id !== '') void queryClient.prefetchQuery(pictureQuery(id, 'screen'));
    }
  }, [queryClient, key]);
}

const isField = (target: EventTarget) =>
  target instanceof HTMLElement && target.matches('input, textarea, select, [role=combobox]');

/** The large view, with what is known about the file and what can be done with it. */
export function PhotoViewer({ files, shownId, onShow }: PhotoViewerProps) {
  const isNarrow = useMediaQuery('(max-width: 48em)');
  const at = files.findIndex((file) => file.id === shownId);
  const file = files[at];
  useNeighbours(files, at);
  const step = (by: number) => {
    const next = files[at + by];
    if (next !== undefined) onShow(next.id);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (isField(event.target) || event.altKey || event.ctrlKey || event.metaKey) return;
    if (event.key === 'ArrowLeft') step(-1);
    else if (event.key === 'ArrowRight') step(1);
  };
  return (
    <Modal
      opened={file !== undefined}
      onClose={() => onShow(null)}
      size={1200}
      fullScreen={isNarrow}
      title={file === undefined ? '' : `${kindText(file)} ${at + 1} of ${files.length}`}
      onKeyDown={onKeyDown}
    >
      {file === undefined ? null : (
        <div className={classes.viewer}>
          <div className={classes.stage}>
            <Arrow to="previous" disabled={at === 0} onClick={() => step(-1)} />
            <div className={classes.shown} key={file.id}>
              {isPhoto(file) ? <LargePicture file={file} /> : <DocumentView file={file} />}
            </div>
            <Arrow to="next" disabled={at === files.length - 1} onClick={() => step(1)} />
          </div>
          <PhotoFacts key={file.id} file={file} />
        </div>
      )}
    </Modal>
  );
}

interface ArrowProps {
  to: 'previous' | 'next';
  disabled: boolean;
  onClick: () => void;
}

function Arrow({ to, disabled, onClick }: ArrowProps) {
  const Icon = to === 'next' ? IconChevronRight : IconChevronLeft;
  return (
    <ActionIcon
      variant="default"
      aria-label={to === 'next' ? 'Next' : 'Previous'}
      // Kept in the focus order at the ends, so that the arrow keys go on working.
      aria-disabled={disabled}
      className={disabled ? classes.atEnd : ''}
      onClick={() => disabled || onClick()}
    >
      <Icon aria-hidden="true" />
    </ActionIcon>
  );
}
