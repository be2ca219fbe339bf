type KeyPress = Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'shiftKey' | 'altKey'>;

/** Ctrl or Cmd with Z, and nothing else held. */
export function isUndoKey({ key, ctrlKey, metaKey, shiftKey, altKey }: KeyPress): boolean {
  return key.toLowerCase() === 'z' && ctrlKey !== metaKey && !shiftKey && !altKey;
}
