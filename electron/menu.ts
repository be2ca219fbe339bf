import { Menu, type MenuItemConstructorOptions } from 'electron';

const view: MenuItemConstructorOptions = {
  label: 'View',
  submenu: [
    { role: 'resetZoom' },
    { role: 'zoomIn' },
    { role: 'zoomOut' },
    { type: 'separator' },
    { role: 'togglefullscreen' },
  ],
};

/** Copy, zoom and quit by key. No reload and no developer tools to hit by accident. */
export function setupMenu(platform: NodeJS.Platform): void {
  const ownMenu: MenuItemConstructorOptions[] =
    platform === 'darwin'
      ? [{ role: 'appMenu' }]
      : [{ label: 'File', submenu: [{ role: 'quit' }] }];
  Menu.setApplicationMenu(Menu.buildFromTemplate([...ownMenu, { role: 'editMenu' }, view]));
}
