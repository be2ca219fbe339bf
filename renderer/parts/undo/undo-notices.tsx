import { useEffect } from 'react';
import { api } from '../../api/client.ts';
import { onDone } from '../../api/done.ts';
import { hideUndoNotice, showUndoNotice } from './showing.ts';
import { UndoNotice } from './undo-notice.tsx';

const showMs = 10_000;

/** Offers to take back what was just done in this window. The history offers the same for longer. */
export function UndoNotices() {
  useEffect(() => {
    let latest = '';
    const stop = onDone(async (commandId) => {
      latest = commandId;
      hideUndoNotice();
      // Nobody asked for the note: where it cannot be read, the history still offers to undo.
      const [item] = await api.undo.recent({ of: commandId }).catch(() => []);
      if (latest !== commandId || item?.canUndo !== true) return;
      showUndoNotice(commandId, <UndoNotice item={item} onDone={hideUndoNotice} />, showMs);
    });
    return () => {
      stop();
      hideUndoNotice();
    };
  }, []);
  return null;
}
