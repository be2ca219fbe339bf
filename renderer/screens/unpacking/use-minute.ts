import { useEffect, useState } from 'react';

const tickMs = 15_000;

/** Milliseconds of the clock, read anew a few times a minute while the screen is open. */
export function useMinute(): number {
  const [now, setNow] = useState(() => Date.now());
  useEffect(() => {
    const timer = setInterval(() => setNow(Date.now()), tickMs);
    return () => clearInterval(timer);
  }, []);
  return now;
}
