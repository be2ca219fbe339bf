import { takeLock } from '../../../core/storage/lock.ts';

const [, , path = ''] = process.argv;
takeLock(path);
console.log('there');
setInterval(() => {}, 1000);
