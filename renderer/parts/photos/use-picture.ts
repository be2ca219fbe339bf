import { useQuery } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import { orpc } from '../../api/client.ts';

export type PictureSize = 'thumb' | 'screen';

/** A picture never changes: it is read once, whatever else in the shop changes. */
export const pictureQuery = (id: string, size: PictureSize) =>
  orpc.attachments.image.queryOptions({ input: { id, size }, staleTime: 'static' });

/** An address for the bytes, given back when they are no longer shown. */
export function useBlobUrl(blob: Blob | undefined): string | null {
  const [url, setUrl] = useState<string | null>(null);
  useEffect(() => {
    if (blob === undefined) {
      setUrl(null);
      return;
    }
    const made = URL.createObjectURL(blob);
    setUrl(made);
    return () => URL.revokeObjectURL(made);
  }, [blob]);
  return url;
}

export interface Picture {
  url: string | null;
  error: unknown;
  again(): void;
}

/** A picture in the size asked for; nothing is read until it is wanted. */
export function usePicture(id: string, size: PictureSize, wanted = true): Picture {
  const query = useQuery({ ...pictureQuery(id, size), enabled: wanted });
  const url = useBlobUrl(query.data);
  return { url, error: query.error, again: () => void query.refetch() };
}
