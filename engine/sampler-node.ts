/** The same in a thread of Node. */
import { parentPort } from 'node:worker_threads';
import { library, startSampler } from './study/index';

const port = parentPort;
if (!port) throw new RangeError('This file runs in a worker thread only');
const take = startSampler(library, {
  post: (answer, moved) => port.postMessage(answer, moved as ArrayBuffer[]),
  now: () => performance.now(),
});
port.on('message', take);
