import { contextBridge, ipcRenderer } from 'electron';
import {
  corePortMessage,
  corePortPleaseMessage,
  desktopChannels,
  desktopGlobal,
  type TillermarkDesktop,
} from '../shared/desktop.ts';

window.addEventListener('message', (event) => {
  if (event.source !== window || event.data !== corePortPleaseMessage) return;
  ipcRenderer.send(desktopChannels.corePortPlease);
});

ipcRenderer.on(desktopChannels.corePort, (event) => {
  const [port] = event.ports;
  if (port !== undefined) window.postMessage(corePortMessage, location.origin, [port]);
});

const desktop: TillermarkDesktop = {
  openPdf: (name, bytes) => ipcRenderer.invoke(desktopChannels.openPdf, name, bytes),
  chooseFolder: () => ipcRenderer.invoke(desktopChannels.chooseFolder),
};
contextBridge.exposeInMainWorld(desktopGlobal, desktop);
