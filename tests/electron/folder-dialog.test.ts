import { beforeEach, expect, test, vi } from 'vitest';
import { setupFolderDialog } from '../../electron/folder-dialog.ts';
import { ask, strangers } from './senders.ts';
import { dialog, resetStandIn } from './stand-in.ts';

vi.mock('electron', () => import('./stand-in.ts'));

beforeEach(() => {
  resetStandIn();
  setupFolderDialog();
});

test('the chosen folder comes back', async () => {
  dialog.folder = { canceled: false, filePaths: ['/shop'] };
  expect(await ask('choose-folder', [])).toBe('/shop');
});

test('choosing none is null', async () => {
  expect(await ask('choose-folder', [])).toBeNull();
});

test.each(strangers)('%s may not ask for a folder', async (_who, from) => {
  dialog.folder = { canceled: false, filePaths: ['/shop'] };
  await expect(ask('choose-folder', [], from)).rejects.toThrow('may not ask');
});
