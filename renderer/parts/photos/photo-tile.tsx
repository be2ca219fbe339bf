import { useInViewport } from '@mantine/hooks';
import { IconFileText, IconFileTypePdf, IconMail, IconPhotoOff } from '@tabler/icons-react';
import { useEffect, useState } from 'react';
import type { Attachment } from '../../../shared/contract/attachments.ts';
import { Mark } from '../mark.tsx';
import { sizeText } from '../save-file.ts';
import { altOf, isPhoto, kindText, titleOf, whenText } from './photo-words.ts';
import classes from './photos.module.css';
import { usePicture } from './use-picture.ts';

/** Pictures that nobody has scrolled to are not read. Once seen, they stay. */
function useSeen() {
  const { ref, inViewport } = useInViewport<HTMLButtonElement>();
  const [isSeen, setSeen] = useState(false);
  useEffect(() => {
    if (inViewport) setSeen(true);
  }, [inViewport]);
  return { ref, isSeen };
}

function Thumb({ file, wanted }: { file: Attachment; wanted: boolean }) {
  const { url, error } = usePicture(file.id, 'thumb', wanted);
  if (error !== null) {
    return (
      <span className={classes.missing}>
        <IconPhotoOff aria-hidden="true" /> Cannot be shown
      </span>
    );
  }
  if (url === null) return null;
  return <img className={classes.picture} src={url} alt={altOf(file)} draggable={false} />;
}

const icons: Partial<Record<Attachment['mediaType'], typeof IconMail>> = {
  'application/pdf': IconFileTypePdf,
  'message/rfc822': IconMail,
};

/** A document stands as its kind and size; its name is the title under it. */
export function DocumentSign({ file }: { file: Attachment }) {
  const Icon = icons[file.mediaType] ?? IconFileText;
  return (
    <span className={classes.document}>
      <Icon size={40} stroke={1.5} aria-hidden="true" />
      {kindText(file)}, {sizeText(file.bytes)}
    </span>
  );
}

/** One photograph or document: opens the large view. */
export function PhotoTile({ file, onOpen }: { file: Attachment; onOpen: () => void }) {
  const { ref, isSeen } = useSeen();
  const isStruck = file.struckReason !== null;
  return (
    <button
      ref={ref}
      type="button"
      className={`${classes.tile} ${isStruck ? classes.struck : ''}`}
      title={titleOf(file)}
      onClick={onOpen}
    >
      <span className={classes.frame}>
        {isPhoto(file) ? <Thumb file={file} wanted={isSeen} /> : <DocumentSign file={file} />}
      </span>
      <span className={classes.caption}>{titleOf(file)}</span>
      {isStruck ? (
        <Mark kind="stop">Struck out</Mark>
      ) : (
        <span className={classes.quiet}>{whenText(file)}</span>
      )}
    </button>
  );
}
