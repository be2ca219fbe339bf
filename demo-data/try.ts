import { mkdtempSync } from 'node:fs';
import { Core } from '../core/host/core.ts';
import { boardCards } from '../core/shop/orders/board.ts';
import { furnishDemo } from './furnish.ts';
const folder = mkdtempSync('/tmp/h/demo-');
const core = new Core({ dataFolder: folder });
console.log((await core.settled()).phase, folder);
const t = performance.now();
let last = '';
try {
  await furnishDemo(core.shop(), { today: '2026-11-25', onProgress: (d, w) => { if (w !== last) { last = w; if (process.argv[2]) console.log(d.toFixed(2), w, Math.round(performance.now() - t)); } } });
} catch (e) { console.log(e); }
console.log(process.cpuUsage());console.log('ms', Math.round(performance.now() - t));
await core.close();console.log("closed",process.getActiveResourcesInfo());

process.exit(0);
