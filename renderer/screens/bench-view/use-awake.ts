import { useEffect } from 'react';

/** Keeps the screen lit while a bow is worked on, where the browser can; harmless elsewhere. */
export function useAwake(): void {
  useEffect(() => {
    let lock: WakeLockSentinel | null = null;
    let gone = false;
    const ask = async () => {
      if (!('wakeLock' in navigator) || document.visibilityState !== 'visible') return;
      // Refused on an empty battery: the screen then dims as it always did.
      const given = await navigator.wakeLock.request('screen').catch(() => null);
      if (gone) void given?.release();
      else lock = given;
    };
    const again = () => void ask();
    void ask();
    document.addEventListener('visibilitychange', again);
    return () => {
      gone = true;
      document.removeEventListener('visibilitychange', again);
      void lock?.release();
    };
  }, []);
}
