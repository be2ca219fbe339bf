import { useEffect } from 'react';
import { isTyping } from './focus.ts';
import { openFound } from './open-found.ts';
import { ScanBuffer } from './scan-buffer.ts';
import { isScanTaken } from './scan-taker.ts';

/**
 * A scanned order number opens its order from anywhere outside a field; a scanned label of a shelf
 * or a lot opens the form that issues from it. A form that takes scans itself comes first.
 */
export function useScanner(): void {
  useEffect(() => {
    const buffer = new ScanBuffer();
    const onKey = (event: KeyboardEvent) => {
      if (isTyping(event.target) || event.ctrlKey || event.metaKey || event.altKey) return;
      const scanned = buffer.press(event.key, event.timeStamp);
      if (scanned === null) return;
      // The Enter belongs to the scan, not to the button that happens to have the focus.
      event.preventDefault();
      event.stopPropagation();
      if (!isScanTaken(scanned)) void openFound(scanned);
    };
    window.addEventListener('keydown', onKey, { capture: true });
    return () => window.removeEventListener('keydown', onKey, { capture: true });
  }, []);
}
