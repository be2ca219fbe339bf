import { useEffect, useState } from 'react';

const tickMs = 1000;

/**
 * Milliseconds of the clock, read anew each second on the second. A screen that nobody sees is not
 * drawn, and catches up when it is looked at again.
 */
export function useSecond(isNeeded = true): number {
  const [now, setNow] = useState(() => Date.now());
  useEffect(() => {
    if (!isNeeded) return;
    setNow(Date.now());
    const timer = setInterval(() => setNow(Date.now()), tickMs);
    return () => clearInterval(timer);
  }, [isNeeded]);
  return now;
}
