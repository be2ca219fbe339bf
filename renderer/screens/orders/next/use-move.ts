import { useState } from 'react';
import type { MoveResult } from '../../../../shared/contract/orders.ts';
import type { MissingItem } from '../../../../shared/gates.ts';
import type { Stage } from '../../../../shared/stages.ts';
import { api } from '../../../api/client.ts';
import { useOrder } from '../order-screen.tsx';
import { useOrderCommand } from '../use-order-command.ts';

interface Extra {
  reason?: string;
  override?: { reason: string };
}

/** A move that waits for its reason. */
export interface Asking {
  what: 'back' | 'override';
  to: Stage;
}

export interface Refusal {
  to: Stage;
  missing: MissingItem[];
}

/** Moves the order along its route and keeps what a refused move was missing. */
export function useMove() {
  const { order } = useOrder();
  const [tried, setTried] = useState<{ refusal: Refusal; rowVersion: number } | null>(null);
  const { id, rowVersion } = order.card;
  const command = useOrderCommand(api.orders.move);

  const move = async (to: Stage, extra: Extra = {}): Promise<MoveResult | undefined> => {
    const result = await command.run({ id, rowVersion, to, ...extra });
    if (result === undefined) return result;
    const refusal = result.outcome === 'refused' ? { to, missing: result.missing } : null;
    setTried(refusal === null ? null : { refusal, rowVersion });
    return result;
  };
  // What was missing for the next stage is always read anew; for one further on, until it moves.
  const isOld = tried === null || tried.rowVersion !== rowVersion;
  const refusal = isOld || tried.refusal.to === order.next?.stage ? null : tried.refusal;
  return { move, command, refusal, forget: () => setTried(null) };
}

export type Move = ReturnType<typeof useMove>;
