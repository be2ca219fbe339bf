import { startCore } from '../../core/host/core.ts';
import { openHttpDoor } from '../../core/host/http-door.ts';
import { openMessagePortDoor } from '../../core/host/message-port-door.ts';

/** The core process as it runs for real, with its message port carried over the child's own channel. */
const [dataFolder = '', token = ''] = process.argv.slice(2);
const core = await startCore({ dataFolder });
await core.settled();
const http = await openHttpDoor(core, { port: 0, token, renderer: import.meta.dirname });
openMessagePortDoor(core, {
  onMessage: (listener) => process.on('message', listener),
  onClose: (listener) => process.on('disconnect', listener),
  post: (data) => process.send?.(data as string),
  close: () => process.disconnect(),
});
process.send?.(JSON.stringify({ url: http.url }));
