import { useEffect, useRef } from 'react';
import { navigate } from 'wouter/use-browser-location';
import { useWho } from '../api/who.ts';
import { focusCommandBox, isTyping } from './focus.ts';
import { screensFor } from './screens.ts';
import { singleKeysOn } from './single-keys.ts';

const sequenceMs = 1200;

/** Ctrl/Cmd+K, and where they are switched on: `?`, and `g` followed by the key of a screen. */
export function useKeys({ onShortcutList }: { onShortcutList: () => void }): void {
  const show = useRef(onShortcutList);
  show.current = onShortcutList;
  const role = useWho()?.role ?? null;
  useEffect(() => {
    let goAt = 0;
    const onKey = (event: KeyboardEvent) => {
      if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === 'k') {
        event.preventDefault();
        return focusCommandBox();
      }
      if (event.ctrlKey || event.metaKey || event.altKey) return;
      if (isTyping(event.target) || !singleKeysOn() || document.querySelector('[role=dialog]')) {
        return;
      }
      if (event.key === '?') {
        event.preventDefault();
        return show.current();
      }
      const going = event.timeStamp - goAt < sequenceMs;
      goAt = event.key === 'g' ? event.timeStamp : 0;
      const screen = going ? screensFor(role).find(({ key }) => key === event.key) : undefined;
      if (screen !== undefined) navigate(screen.href);
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, [role]);
}
