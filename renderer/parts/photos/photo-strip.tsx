import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { Attachment, AttachmentPlace } from '../../../shared/contract/attachments.ts';
import { orpc } from '../../api/client.ts';
import { BusyNote, ErrorNote } from '../notes.tsx';
import { AddPhotos } from './add-photos.tsx';
import { belongs, inOrder, listPlace, type PhotoPlace } from './photo-place.ts';
import { PhotoTile } from './photo-tile.tsx';
import { PhotoViewer } from './photo-viewer.tsx';
import classes from './photos.module.css';
import { UploadRows } from './upload-rows.tsx';
import { useUploads } from './uploads.ts';
import { useIncoming } from './use-incoming.ts';

interface PhotoStripProps {
  of: PhotoPlace;
  /** False where photographs are only looked at. */
  canAdd?: boolean;
}

/**
 * Photographs and files of an order, a bow, a finding, an incident or a shipment: to look at, to
 * describe, and to add by choosing, dragging or pasting.
 * @example <PhotoStrip of={{ orderId, findingId }} />
 */
export function PhotoStrip({ of, canAdd = true }: PhotoStripProps) {
  const place = listPlace(of);
  if (place === null) return null;
  return canAdd ? <FillableStrip of={of} place={place} /> : <StripBody of={of} place={place} />;
}

interface StripProps {
  of: PhotoPlace;
  place: AttachmentPlace;
}

function FillableStrip({ of, place }: StripProps) {
  const uploads = useUploads(of);
  const { isOver, zone } = useIncoming(uploads.add);
  return (
    <div {...zone} className={`${classes.strip} ${isOver ? classes.over : ''}`}>
      <StripBody of={of} place={place} />
      <UploadRows uploads={uploads} />
      <AddPhotos onFiles={uploads.add} isOver={isOver} />
    </div>
  );
}

function StripBody({ of, place }: StripProps) {
  const query = useQuery(orpc.attachments.list.queryOptions({ input: place }));
  if (query.data === undefined) {
    return query.isError ? (
      <ErrorNote error={query.error} onAgain={() => void query.refetch()} busy={query.isFetching} />
    ) : (
      <BusyNote>Reading the photographs ...</BusyNote>
    );
  }
  return <Tiles files={inOrder(query.data.filter((file) => belongs(file, of)))} />;
}

function Tiles({ files }: { files: readonly Attachment[] }) {
  const [shownId, setShownId] = useState<string | null>(null);
  if (files.length === 0) return <p className={classes.quiet}>No photographs or files yet.</p>;
  return (
    <>
      <ul className={classes.tiles}>
        {files.map((file) => (
          <li key={file.id} className={classes.place}>
            <PhotoTile file={file} onOpen={() => setShownId(file.id)} />
          </li>
        ))}
      </ul>
      <PhotoViewer files={files} shownId={shownId} onShow={setShownId} />
    </>
  );
}
