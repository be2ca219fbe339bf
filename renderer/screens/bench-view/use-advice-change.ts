import { useRef, useState } from 'react';

/**
 * Tells when the advice became another while nobody here did anything: another person wrote, or a
 * record was struck out. What this screen does itself is expected and says nothing.
 */
export function useAdviceChange(advice: string | null) {
  const known = useRef(advice);
  const own = useRef(false);
  const [isChanged, setChanged] = useState(false);
  if (advice !== null && advice !== known.current) {
    if (known.current !== null && !own.current && !isChanged) setChanged(true);
    own.current = false;
    known.current = advice;
  }
  return {
    isChanged,
    /** This screen is about to write. */
    expect: () => {
      own.current = true;
      setChanged(false);
    },
    /** It did not come to a write. */
    failed: () => {
      own.current = false;
    },
    seen: () => setChanged(false),
  };
}
