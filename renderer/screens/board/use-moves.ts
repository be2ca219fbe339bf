import { useState } from 'react';
import type { ContractRequests } from '../../../shared/contract/types.ts';
import type { MissingItem } from '../../../shared/gates.ts';
import { api, orpc } from '../../api/client.ts';
import { useCommand } from '../../api/command.ts';
import { queryClient } from '../../api/queries.ts';
import { isBackward, type Move } from './is-backward.ts';

type Extra = Pick<ContractRequests['orders']['move'], 'reason' | 'override'>;

/** What a move is waiting for. `failed` covers stale and every other refusal of the core. */
export type Asking =
  | { what: 'reason'; move: Move }
  | { what: 'missing'; move: Move; missing: MissingItem[] }
  | { what: 'failed'; move: Move };

/**
 * Moves cards. `moving` is shown at its goal at once; every other end than "moved" puts it back
 * by clearing it, because the list of cards itself is never changed here.
 */
export function useMoves() {
  const [moving, setMoving] = useState<Move | null>(null);
  const [asking, setAsking] = useState<Asking | null>(null);
  const command = useCommand(api.orders.move);

  const settle = async (move: Move, sent: ReturnType<typeof command.run>) => {
    const result = await sent;
    if (result === undefined) setAsking({ what: 'failed', move });
    else if (result.outcome === 'refused') {
      setAsking({ what: 'missing', move, missing: result.missing });
    } else setAsking(null);
    await queryClient.invalidateQueries({ queryKey: orpc.orders.key() });
    setMoving(null);
  };
  const send = (move: Move, extra: Extra = {}) => {
    setMoving(move);
    const { id, rowVersion } = move.card;
    return settle(move, command.run({ id, rowVersion, to: move.to, ...extra }));
  };

  return {
    moving,
    asking,
    command,
    /** Starts a move: asks first when it goes backward. */
    start: (move: Move) => {
      if (move.to === move.card.stage || command.busy) return;
      command.reset();
      if (isBackward(move)) setAsking({ what: 'reason', move });
      else void send(move);
    },
    send: (move: Move, extra: Extra) => void send(move, extra),
    again: (move: Move) => {
      setMoving(move);
      void settle(move, command.again());
    },
    cancel: () => {
      command.reset();
      setAsking(null);
    },
  };
}
