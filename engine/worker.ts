/** The engine in a worker of its own, served to the page through Comlink. */
import { expose } from 'comlink';
import { makeReference, type ReferenceService } from './reference/index';
import { library, startEngine } from './study/index';

/** A message to itself lets others in between; a timer would wait 4 ms each time. */
const { port1, port2 } = new MessageChannel();
const waiting: (() => void)[] = [];
port1.onmessage = () => waiting.shift()?.();
const pause = (): Promise<void> =>
  new Promise((resolve) => {
    waiting.push(resolve);
    port2.postMessage(null);
  });

const reference: ReferenceService = { reference: async () => makeReference() };

expose({ ...startEngine(library, { pause, now: () => performance.now() }), ...reference });
