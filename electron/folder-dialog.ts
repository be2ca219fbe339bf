import { dialog } from 'electron';
import { desktopChannels } from '../shared/desktop.ts';
import { answer } from './ipc.ts';

export function setupFolderDialog(): void {
  answer(desktopChannels.chooseFolder, async (): Promise<string | null> => {
    const { canceled, filePaths } = await dialog.showOpenDialog({
      title: 'Choose a folder',
      properties: ['openDirectory', 'createDirectory'],
    });
    return canceled ? null : (filePaths[0] ?? null);
  });
}
