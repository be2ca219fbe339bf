import { useState } from 'react';
import { readDevice, type Wanted } from './device-reading.ts';
import { stepped } from './stepping.ts';
import { useBenchKeys } from './use-bench-keys.ts';

interface NumberKeys {
  wanted: Wanted;
  /** Null while there is nothing to step from. */
  value: number | null;
  step: number;
  onStep: (value: number) => void;
  /** A whole value came, from a device or by hand with Enter. */
  onEntered: (value: number) => void;
  /** Enter with nothing keyed in. */
  onConfirm: () => void;
  onBack?: () => void;
  /** Takes what was entered before it is read as a number; true where it did. */
  takes?: (entered: string) => boolean;
}

/** A field that waits for a number, from the number pad, a calliper or a scale alike. */
export function useNumberKeys(keys: NumberKeys) {
  const { wanted, value, step, onStep, onEntered, onConfirm, onBack, takes } = keys;
  const [text, setText] = useState('');
  const [trouble, setTrouble] = useState<string | null>(null);
  const press = useBenchKeys({
    onText: (keyed) => {
      setText(keyed);
      setTrouble(null);
    },
    onEntered: (entered) => {
      if (takes?.(entered) === true) return;
      const read = readDevice(entered, wanted);
      setTrouble(read.ok ? null : read.sentence);
      if (read.ok) onEntered(read.value);
    },
    onConfirm,
    onStep: (by) => {
      if (value !== null) onStep(stepped(value, by * step, wanted));
    },
    ...(onBack === undefined ? {} : { onBack }),
  });
  return { text, trouble, press };
}
