import { useEffect, useRef } from 'react';
import { isTyping } from '../../frame/focus.ts';
import { singleKeysOn } from '../../frame/single-keys.ts';

/** `n` adds a task, unless somebody is typing or has switched single keys off. */
export function useAddKey(onAdd: () => void): void {
  const add = useRef(onAdd);
  add.current = onAdd;
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.key !== 'n' || event.ctrlKey || event.metaKey || event.altKey) return;
      if (isTyping(event.target) || !singleKeysOn()) return;
      if (document.querySelector('[role=dialog]') !== null) return;
      event.preventDefault();
      add.current();
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, []);
}
