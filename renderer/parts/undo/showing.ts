import { notifications } from '@mantine/notifications';
import type { ReactNode } from 'react';

let showing: string | null = null;

/** Takes the note of what was just done off the screen. */
export function hideUndoNotice(): void {
  if (showing !== null) notifications.hide(showing);
  showing = null;
}

/** Shows one note at a time, so that the keys are never about another than the one that is seen. */
export function showUndoNotice(commandId: string, message: ReactNode, milliseconds: number): void {
  hideUndoNotice();
  showing = `done-${commandId}`;
  notifications.show({
    id: showing,
    role: 'status',
    autoClose: milliseconds,
    withBorder: true,
    closeButtonProps: { 'aria-label': 'Close this note' },
    message,
  });
}
