import { expect, test } from 'vitest';
import { isUndoKey } from '../../../renderer/parts/undo/undo-key.ts';

const press = { key: 'z', ctrlKey: false, metaKey: false, shiftKey: false, altKey: false };

test.each([
  ['Ctrl+Z', { ctrlKey: true }, true],
  ['Cmd+Z', { metaKey: true }, true],
  ['Ctrl+Z with the shift lock on', { key: 'Z', ctrlKey: true }, true],
  ['Z alone', {}, false],
  ['Ctrl+Shift+Z, which does it again elsewhere', { ctrlKey: true, shiftKey: true }, false],
  ['Alt Gr+Z, a letter on some keyboards', { ctrlKey: true, altKey: true }, false],
  ['Ctrl+Y', { key: 'y', ctrlKey: true }, false],
])('%s: %s', (_name, held, isUndo) => {
  expect(isUndoKey({ ...press, ...held })).toBe(isUndo);
});
