import { useEffect, useRef } from 'react';
import { isTyping } from '../../frame/focus.ts';
import { type KeyAct, KeyReader } from './key-reader.ts';
import { orderNumberIn } from './order-number.ts';

export interface BenchKeys {
  /** What is keyed in so far, before Enter. */
  onText?: (text: string) => void;
  /** A device's burst or what was keyed in by hand, ended by Enter; never empty. */
  onEntered?: (text: string) => void;
  /** Enter with nothing keyed in. */
  onConfirm?: () => void;
  onStep?: (by: 1 | -1) => void;
  /** Backspace with nothing keyed in. */
  onBack?: () => void;
}

type OnOrder = (number: string) => void;

/** A button that the Tab key went to keeps its Enter; one that was tapped does not. */
function isOnButton(target: EventTarget | null): boolean {
  return target instanceof HTMLElement && target.matches('button:focus-visible, a:focus-visible');
}

const layers: { keys: BenchKeys; reader: KeyReader }[] = [];
let onOrder: OnOrder | null = null;

function act(event: Pick<KeyboardEvent, 'key' | 'timeStamp' | 'target'>): boolean {
  const top = layers.at(-1);
  const reader = top?.reader ?? idle;
  if (event.key === 'Enter' && reader.text === '' && isOnButton(event.target)) return false;
  return apply(reader.press(event.key, event.timeStamp), top?.keys ?? {});
}

const idle = new KeyReader();

function apply(done: KeyAct, keys: BenchKeys): boolean {
  switch (done.act) {
    case 'none':
      return false;
    case 'text':
      keys.onText?.(done.text);
      return true;
    case 'step':
      keys.onStep?.(done.by);
      return keys.onStep !== undefined;
    case 'undo':
      keys.onBack?.();
      return keys.onBack !== undefined;
    case 'enter': {
      const text = done.burst ?? done.text;
      const number = orderNumberIn(text);
      keys.onText?.('');
      if (number !== null && onOrder !== null) onOrder(number);
      else if (text.trim() === '') keys.onConfirm?.();
      else keys.onEntered?.(text);
      return true;
    }
  }
}

/** Listens once for the whole bench view; {@link useBenchKeys} says who takes what it hears. */
export function useBenchListener(open: OnOrder): void {
  const opens = useRef(open);
  opens.current = open;
  useEffect(() => {
    onOrder = (number) => opens.current(number);
    const onKey = (event: KeyboardEvent) => {
      if (isTyping(event.target) || event.ctrlKey || event.metaKey || event.altKey) return;
      if (!act(event)) return;
      event.preventDefault();
      event.stopPropagation();
    };
    window.addEventListener('keydown', onKey, { capture: true });
    return () => {
      onOrder = null;
      window.removeEventListener('keydown', onKey, { capture: true });
    };
  }, []);
}

/**
 * Takes the keys while it is on the screen; of two, the one that came last. Answers a function that
 * presses a key as the keyboard would, for the number pad on the screen.
 */
export function useBenchKeys(keys: BenchKeys): (key: string) => void {
  const layer = useRef<{ keys: BenchKeys; reader: KeyReader } | null>(null);
  layer.current ??= { keys, reader: new KeyReader() };
  layer.current.keys = keys;
  useEffect(() => {
    const mine = layer.current;
    if (mine === null) return;
    layers.push(mine);
    return () => {
      layers.splice(layers.indexOf(mine), 1);
    };
  }, []);
  return (key) => {
    // A finger is no device: its presses never make a burst.
    if (layer.current !== null) apply(layer.current.reader.tap(key), layer.current.keys);
  };
}
