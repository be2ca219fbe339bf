import sharp from 'sharp';
import { takePhotograph } from './pictures/pictures.ts';
import { demoBows } from './cast/bows.ts';
const b = demoBows.get('plover')!; 
const u0 = process.cpuUsage(); const t = performance.now();
for (const s of ['unstrung','tip','chrysals','box','upper fade'] as const) { const u = process.cpuUsage(); const t1 = performance.now(); await takePhotograph(s, b.look, s); const d = process.cpuUsage(u); console.log(s, Math.round((d.user + d.system) / 1000), 'cpu ms', Math.round(performance.now() - t1)); }
for (const s of ['unstrung','tip','chrysals','box','upper fade'] as const) { const u = process.cpuUsage(); const t1 = performance.now(); await takePhotograph(s, b.look, s + 2); const d = process.cpuUsage(u); console.log(s, Math.round((d.user + d.system) / 1000), 'cpu ms', Math.round(performance.now() - t1)); }
process.exit(0);
