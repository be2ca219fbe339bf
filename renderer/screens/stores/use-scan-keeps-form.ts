import { type KeyboardEventHandler, useRef } from 'react';
import { ScanBuffer } from '../../frame/scan-buffer.ts';

/**
 * A scan into a field ends with Enter, which would send the form half filled in. That one Enter
 * is held back; one pressed by hand sends as ever.
 * @param onScan told what was scanned into which field, where somebody wants to know.
 */
export function useScanKeepsForm(
  onScan: (scanned: string, field: EventTarget) => void = () => undefined,
): KeyboardEventHandler {
  const buffer = useRef(new ScanBuffer());
  return (event) => {
    const scanned = buffer.current.press(event.key, event.timeStamp);
    if (scanned === null) return;
    event.preventDefault();
    event.stopPropagation();
    onScan(scanned, event.target);
  };
}
