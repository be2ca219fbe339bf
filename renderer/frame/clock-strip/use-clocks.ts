import { useQuery } from '@tanstack/react-query';
import type { Clock } from '../../../shared/contract/clocks.ts';
import { orpc } from '../../api/client.ts';
import { useSecond } from '../../parts/use-second.ts';

/** New clocks begin by themselves where one ends: they are read again that often. */
const readAgainMs = 60_000;

export interface RunningClocks {
  clocks: readonly Clock[];
  /** Milliseconds of the shop's clock, each second anew, whatever this device's own clock says. */
  nowMs: number;
  /** The computer's clock stands before the last record; null where it does not. */
  trouble: string | null;
}

const none: readonly Clock[] = [];

/** All clocks of the finish room. They tick without a call; only their list is read. */
export function useClocks(): RunningClocks {
  const list = useQuery({
    ...orpc.clocks.list.queryOptions(),
    refetchInterval: readAgainMs,
  });
  const clocks = list.data?.clocks ?? none;
  const here = useSecond(clocks.length > 0);
  const aheadMs = list.data === undefined ? 0 : Date.parse(list.data.now) - list.dataUpdatedAt;
  return { clocks, nowMs: here + aheadMs, trouble: list.data?.trouble ?? null };
}
