import { useState } from 'react';
import { api } from '../../api/client.ts';
import { useCommand } from '../../api/command.ts';
import { queryClient } from '../../api/queries.ts';

/** Takes back one command. What it refuses with stays in `command`. */
export function useUndo(commandId: string, onDone?: () => void) {
  const [isUndone, setUndone] = useState(false);
  const command = useCommand(api.undo.undo, {
    isUndo: true,
    onDone: () => {
      setUndone(true);
      void queryClient.invalidateQueries();
      onDone?.();
    },
  });
  return { isUndone, command, undo: () => void command.run({ of: commandId }) };
}
