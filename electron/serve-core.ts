import type { ParentPort } from 'electron';
import { startCore } from '../core/host/core.ts';
import { openMessagePortDoor } from '../core/host/message-port-door.ts';
import { isCoreMessage } from './core-message.ts';
import { doorPort } from './door-port.ts';

/**
 * Opens the shop and serves it on every port the main process hands over, until told to stop.
 * @param exit Called once the shop is closed.
 */
export async function serveCore(
  parent: ParentPort,
  dataFolder: string,
  exit: () => void,
): Promise<void> {
  const core = await startCore({ dataFolder });
  parent.on('message', ({ data, ports }) => {
    if (!isCoreMessage(data)) return;
    if (data.type === 'stop') void core.close().finally(exit);
    else for (const port of ports) openMessagePortDoor(core, doorPort(port));
  });
}
