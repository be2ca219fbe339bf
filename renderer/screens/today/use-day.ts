import { useEffect, useState } from 'react';
import { today } from '../../parts/days.ts';

const lookMs = 30_000;

/** Calendar day on this computer; a screen left open overnight turns over to the next. */
export function useDay(): string {
  const [day, setDay] = useState(today);
  useEffect(() => {
    const look = () => setDay(today());
    const timer = setInterval(look, lookMs);
    document.addEventListener('visibilitychange', look);
    return () => {
      clearInterval(timer);
      document.removeEventListener('visibilitychange', look);
    };
  }, []);
  return day;
}
