/** The engine in a worker of its own, served to the page through Comlink. */
import { expose, transfer } from 'comlink';
import type { EngineService, FirstDesignService } from './protocol';
import { makeReference, type ReferenceService } from './reference/index';
import {
  type FromSampler,
  firstDesign,
  type HangarService,
  hangarOf,
  type ListeningService,
  library,
  type PoolPorts,
  startEngine,
  startListening,
} from './study/index';

/** A message to itself lets others in between; a timer would wait 4 ms each time. */
const { port1, port2 } = new MessageChannel();
const waiting: (() => void)[] = [];
port1.onmessage = () => waiting.shift()?.();
const pause = (): Promise<void> =>
  new Promise((resolve) => {
    waiting.push(resolve);
    port2.postMessage(null);
  });

/** More workers than this take more memory than they save time. */
const MOST_WORKERS = 8;

const pool: PoolPorts = {
  size: Math.min(navigator.hardwareConcurrency || 0, MOST_WORKERS),
  spawn(hear, died) {
    const worker = new Worker(new URL('./sampler.ts', import.meta.url), { type: 'module', name: 'sampler' });
    worker.addEventListener('message', ({ data }: MessageEvent<FromSampler>) => hear(data));
    worker.addEventListener('error', died);
    worker.addEventListener('messageerror', died);
    return { post: (message) => worker.postMessage(message), end: () => worker.terminate() };
  },
  later(ms, act) {
    const timer = setTimeout(act, ms);
    return () => clearTimeout(timer);
  },
};

const reference: ReferenceService = { reference: async () => makeReference() };
const engine = startEngine(library, { pause, now: () => performance.now(), pool });

expose({
  ...engine,
  // The rows that are told are copies already: they go over as they are.
  sweep: (request, progress) =>
    engine.sweep(request, (p) =>
      progress(transfer(p, [p.why.buffer, ...p.columns.map((column) => column.buffer)] as ArrayBuffer[])),
    ),
  firstDesign: async (form) => firstDesign(form),
  ...hangarOf(library),
  async tableFile(view, format) {
    const pieces = await engine.tableFile(view, format);
    return transfer(
      pieces,
      pieces.flatMap((piece) => (typeof piece === 'string' ? [] : [piece.buffer])),
    );
  },
  ...startListening({ pause, now: () => performance.now() }),
  ...reference,
} satisfies EngineService & ReferenceService & FirstDesignService & HangarService & ListeningService);
