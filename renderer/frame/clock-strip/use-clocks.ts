import { useQuery } from '@tanstack/react-query';
import type { Clock } from '../../../shared/contract/clocks.ts';
import { orpc } from '../../api/client.ts';
import { useSecond } from '../../parts/use-second.ts';
import { stripClocks } from './clock-words.ts';

/** New clocks begin by themselves where one ends: they are read again that often. */
const readAgainMs = 60_000;

export interface ClockList {
  clocks: readonly Clock[];
  /** The shop's clock before this device's, ms: a tablet may go wrong. */
  aheadMs: number;
  /** The computer's clock stands before the last record; null where it does not. */
  trouble: string | null;
}

const none: readonly Clock[] = [];

/** All clocks of the finish room as they were read last. */
export function useClockList(): ClockList {
  const { data, dataUpdatedAt } = useQuery({
    ...orpc.clocks.list.queryOptions(),
    refetchInterval: readAgainMs,
  });
  if (data === undefined) return { clocks: none, aheadMs: 0, trouble: null };
  const { clocks, now, trouble } = data;
  return { clocks, aheadMs: Date.parse(now) - dataUpdatedAt, trouble };
}

/** Milliseconds of the shop's clock, each second anew without a call while something runs. */
export function useShopSecond({ aheadMs }: Pick<ClockList, 'aheadMs'>, isNeeded: boolean): number {
  return useSecond(isNeeded) + aheadMs;
}

/** The clocks to show, most pressing first, and the shop's clock they are read against, ms. */
export function useStripClocks() {
  const list = useClockList();
  const nowMs = useShopSecond(list, list.clocks.length > 0);
  return { shown: stripClocks(list.clocks, nowMs), trouble: list.trouble, nowMs };
}
