import { useEffect, useState } from 'react';

/** What was pressed to get here. An entry of a menu is gone by then: the button of its menu stands for it. */
function pressed(): HTMLElement | null {
  const { activeElement } = document;
  const menu = activeElement?.closest('[role="menu"]');
  const stays =
    menu === null || menu === undefined
      ? activeElement
      : document.querySelector(`[aria-controls="${CSS.escape(menu.id)}"]`);
  return stays instanceof HTMLElement ? stays : null;
}

/**
 * Gives the focus back to what was pressed, when what it opened is taken off the screen. Nothing
 * happens where the focus has gone somewhere else by then.
 */
export function useFocusBack(): void {
  const [opener] = useState(pressed);
  useEffect(
    () => () => {
      requestAnimationFrame(() => {
        if (document.activeElement === document.body && opener?.isConnected === true) {
          opener.focus({ preventScroll: true });
        }
      });
    },
    [opener],
  );
}
