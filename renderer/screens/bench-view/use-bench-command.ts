import { useEffect, useRef } from 'react';
import { type Command, useCommand } from '../../api/command.ts';
import { useConnection } from '../../api/connection.ts';
import { queryClient } from '../../api/queries.ts';

/**
 * A command of the bench. Where its answer got lost, it is sent again by itself with the same id as
 * soon as the program answers, and over a reload it keeps that id: it is carried out once.
 */
export function useBenchCommand<Input extends { commandId: string }, Output>(
  fn: (input: Input) => Promise<Output>,
  name: string,
  onDone: (output: Output) => void,
): Command<Input, Output> {
  const command = useCommand(fn, {
    keptAs: name,
    onDone: (output) => {
      void queryClient.invalidateQueries();
      onDone(output);
    },
  });
  const { state } = useConnection();
  const again = useRef(command);
  again.current = command;
  useEffect(() => {
    if (state === 'open' && again.current.unanswered) void again.current.again();
  }, [state]);
  return command;
}
