import { openWriter } from '../../../core/storage/open.ts';

/** Leaves committed rows in the write-ahead log and, when killed, no one to fold them in. */
const [, , path = ''] = process.argv;
const db = openWriter(path);
db.exec("INSERT INTO limb (id, note) VALUES ('from-the-log', 'committed')");
console.log('there');
setInterval(() => {}, 1000);
