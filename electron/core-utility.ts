import { dataFolderFrom } from './data-folder.ts';
import { serveCore } from './serve-core.ts';

await serveCore(process.parentPort, dataFolderFrom(process.argv), () => process.exit(0));
