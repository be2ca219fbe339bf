/** True while keys belong to a field: typing there must never open something else. */
export function isTyping(target: EventTarget | null): boolean {
  if (!(target instanceof HTMLElement)) return false;
  return target.isContentEditable || target.matches('input, textarea, select');
}

export const commandBoxId = 'command-box';

export function focusCommandBox(): void {
  const box = document.getElementById(commandBoxId);
  if (box instanceof HTMLInputElement) {
    box.focus();
    box.select();
  }
}
