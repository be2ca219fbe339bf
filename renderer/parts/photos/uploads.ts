import { useQueryClient } from '@tanstack/react-query';
import { useCallback, useRef, useState } from 'react';
import { maxAttachmentBytes, tooLargeSentence } from '../../../shared/attachments.ts';
import { api, newCommandId, orpc } from '../../api/client.ts';
import { isUnanswered, sentenceOf } from '../../api/errors.ts';
import { linksOf, type PhotoPlace, subjectOf } from './photo-place.ts';

/** One file on its way in. The command id stays with it, so that a second try is harmless. */
export interface Upload {
  commandId: string;
  file: File;
  state: 'waiting' | 'adding' | 'there-already' | 'failed';
  /** What to do, where it failed. */
  error: string | null;
  /** Nobody knows whether it was added: trying again is right and harmless. */
  mayRetry: boolean;
}

export interface Uploads {
  list: readonly Upload[];
  add(files: readonly File[]): void;
  again(commandId: string): void;
  dismiss(commandId: string): void;
}

function queued(file: File): Upload {
  // Refused here already: the core would have to read all of it first.
  const error = file.size > maxAttachmentBytes ? tooLargeSentence(file.name) : null;
  return {
    commandId: newCommandId(),
    file,
    state: error === null ? 'waiting' : 'failed',
    error,
    mayRetry: false,
  };
}

async function sendOne(upload: Upload, of: PhotoPlace): Promise<Upload | null> {
  const { commandId, file } = upload;
  try {
    const input = { commandId, file, about: subjectOf(of), caption: '', ...linksOf(of) };
    const { outcome } = await api.attachments.add(input);
    return outcome === 'added' ? null : { ...upload, state: 'there-already' };
  } catch (error) {
    return {
      ...upload,
      state: 'failed',
      error: sentenceOf(error),
      mayRetry: isUnanswered(error),
    };
  }
}

/** Adds files one after the other; what was added leaves the list, what was refused stays in it. */
export function useUploads(of: PhotoPlace): Uploads {
  const [list, setList] = useState<readonly Upload[]>([]);
  const line = useRef<Promise<void>>(Promise.resolve());
  const place = useRef(of);
  place.current = of;
  const queryClient = useQueryClient();

  const replace = useCallback((commandId: string, by: Upload | null) => {
    setList((now) =>
      now.flatMap((each) => {
        if (each.commandId !== commandId) return [each];
        return by === null ? [] : [by];
      }),
    );
  }, []);

  const send = useCallback(
    (upload: Upload) => {
      // Where it was dropped counts, not what the page shows when its turn comes.
      const target = place.current;
      line.current = line.current.then(async () => {
        replace(upload.commandId, { ...upload, state: 'adding', error: null });
        const left = await sendOne(upload, target);
        if (left?.state !== 'failed') {
          await queryClient.invalidateQueries({ queryKey: orpc.attachments.list.key() });
        }
        replace(upload.commandId, left);
      });
    },
    [queryClient, replace],
  );

  return {
    list,
    add: (files) => {
      const fresh = files.map(queued);
      setList((now) => [...now, ...fresh]);
      for (const upload of fresh) if (upload.state === 'waiting') send(upload);
    },
    again: (commandId) => {
      const upload = list.find((each) => each.commandId === commandId);
      if (upload === undefined) return;
      replace(commandId, { ...upload, state: 'waiting', error: null });
      send(upload);
    },
    dismiss: (commandId) => replace(commandId, null),
  };
}
