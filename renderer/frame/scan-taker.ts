import { useEffect, useRef } from 'react';

type Take = (scanned: string) => void;

const takers: { current: Take }[] = [];

/** A form that knows better what a scan means has it first, as long as it is open. */
export function useScanTaker(take: Take): void {
  const latest = useRef(take);
  latest.current = take;
  useEffect(() => {
    takers.push(latest);
    return () => {
      takers.splice(takers.indexOf(latest), 1);
    };
  }, []);
}

/** Hands a scan to the form opened last; false where none takes scans. */
export function isScanTaken(scanned: string): boolean {
  const last = takers.at(-1);
  last?.current(scanned);
  return last !== undefined;
}
