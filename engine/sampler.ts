/** Runs samples of sweeps in a worker of its own, for the engine in another. */
import type { ToSampler } from './study/index';
import { library, startSampler } from './study/index';

const take = startSampler(library, {
  post: (answer, moved) => postMessage(answer, { transfer: moved as ArrayBuffer[] }),
  now: () => performance.now(),
});
addEventListener('message', ({ data }: MessageEvent<ToSampler>) => take(data));
