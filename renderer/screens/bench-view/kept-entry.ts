import { useEffect, useState } from 'react';
import type { z } from '../../../shared/zod.ts';

const prefix = 'tillermark-bench-';

/** What was kept under a name, where it still has the shape it should have. */
export function readKept<T>(storage: Storage, name: string, shape: z.ZodType<T>): T | null {
  try {
    const read = shape.safeParse(JSON.parse(storage.getItem(prefix + name) ?? 'null'));
    return read.success ? read.data : null;
  } catch {
    return null;
  }
}

/**
 * An entry that outlives a lost connection, a reload and a power cut of the tablet: it is kept in
 * this browser until it is cleared. The name says what it belongs to, so that it never turns up
 * under another bow or another step.
 */
export function useKeptEntry<T>(name: string, shape: z.ZodType<T>, fresh: T) {
  const [entry, setEntry] = useState<T>(() => readKept(localStorage, name, shape) ?? fresh);
  const [isTouched, setTouched] = useState(() => readKept(localStorage, name, shape) !== null);
  useEffect(() => {
    if (isTouched) localStorage.setItem(prefix + name, JSON.stringify(entry));
  }, [name, entry, isTouched]);
  return {
    entry: isTouched ? entry : fresh,
    isTouched,
    change: (next: T) => {
      setTouched(true);
      setEntry(next);
    },
    clear: () => {
      localStorage.removeItem(prefix + name);
      setTouched(false);
      setEntry(fresh);
    },
  };
}
