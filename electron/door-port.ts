import type { MessagePortMain } from 'electron';
import type { DoorPort } from '../core/host/message-port-door.ts';

/** Electron's message port as a door of the core. */
export function doorPort(port: MessagePortMain): DoorPort {
  return {
    onMessage: (listener) => {
      port.on('message', (event) => listener(event.data));
      // Electron holds messages back until then, so none is lost before the listener stands.
      port.start();
    },
    onClose: (listener) => port.on('close', listener),
    post: (data) => port.postMessage(data),
    close: () => port.close(),
  };
}
