import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { takeLock } from '../../../core/storage/lock.ts';

/** Takes the lock and refers to it no more: it must hold through a collection all the same. */
const [, , path = ''] = process.argv;
takeLock(path);
setFlagsFromString('--expose-gc');
runInNewContext('gc')();
// The second look at the clock lets the collected object's finaliser run.
setTimeout(() => console.log('there'), 50);
setInterval(() => {}, 1000);
