import { useEffect } from 'react';
import { orpc } from '../../api/client.ts';
import { type Command, useCommand } from '../../api/command.ts';
import { codeOf } from '../../api/errors.ts';
import { queryClient } from '../../api/queries.ts';

export function readOrdersAgain(): void {
  void queryClient.invalidateQueries({ queryKey: orpc.orders.key() });
}

const whatToDo =
  'The page now shows the order as it is. What you typed is still here: look at it and send it again.';

/** A command on this order. Afterwards, and when somebody else was faster, the order is read again. */
export function useOrderCommand<Input extends { commandId: string }, Output>(
  fn: (input: Input) => Promise<Output>,
  onDone?: (output: Output) => void,
): Command<Input, Output> {
  const command = useCommand(fn, {
    onDone: (output) => {
      readOrdersAgain();
      onDone?.(output);
    },
  });
  const isStale = codeOf(command.cause) === 'STALE';
  useEffect(() => {
    if (isStale) readOrdersAgain();
  }, [isStale]);
  return isStale ? { ...command, error: `${command.error} ${whatToDo}` } : command;
}
