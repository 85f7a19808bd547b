import type { Document, EngineService, Shown, Snapshot } from '../../engine/index';

type Texts = ReadonlyMap<string, string>;

export interface EngineLink {
  /** The whole document is new, or its structure is. */
  open(document: Document): void;
  /** Some texts of it are new. */
  set(document: Document, texts: Texts): void;
  /** The hand rests: what waited for that is asked for. */
  rest(document: Document): void;
  /** Something is on its way to the engine or back. */
  busy(): boolean;
}

export interface LinkPorts {
  take(snapshot: Snapshot): void;
  /** What is on the screen while a hand moves the design; undefined while none does. */
  shown(): Shown | undefined;
  /** Called after each answer; the next call to the engine waits for it. */
  settle(): Promise<void>;
  onBusy(busy: boolean): void;
  /** The engine itself failed; a sentence. */
  onFault(message: string): void;
}

interface Waiting {
  document: Document;
  /** Missing: send the whole document. */
  texts?: Map<string, string>;
  /** Nothing may wait. */
  whole?: boolean;
}

/**
 * Tells the engine of edits, one call at a time. What is edited meanwhile is gathered and goes out as one call, with the
 * latest text of each path: a moving finger never builds a queue.
 */
export function linkEngine(engine: Pick<EngineService, 'open' | 'set'>, ports: LinkPorts): EngineLink {
  let waiting: Waiting | undefined;
  let running = false;
  let opened = false;

  async function call(job: Waiting): Promise<Snapshot> {
    if (opened && job.texts) return await engine.set([...job.texts], job.whole ? undefined : ports.shown());
    const snapshot = await engine.open(job.document);
    opened = true;
    return snapshot;
  }

  async function run(): Promise<void> {
    running = true;
    ports.onBusy(true);
    while (waiting) {
      const job = waiting;
      waiting = undefined;
      try {
        ports.take(await call(job));
        await ports.settle();
      } catch (error) {
        // Its copy of the document may be behind ours: the next call sends the whole.
        opened = false;
        ports.onFault(error instanceof Error ? error.message : String(error));
      }
    }
    running = false;
    ports.onBusy(false);
  }

  function start(): void {
    if (!running) void run();
  }

  return {
    open(document) {
      waiting = { document };
      start();
    },
    set(document, texts) {
      if (!waiting) waiting = { document, texts: new Map(texts) };
      else {
        waiting.document = document;
        waiting.whole = false;
        if (waiting.texts) for (const [path, text] of texts) waiting.texts.set(path, text);
      }
      start();
    },
    rest(document) {
      waiting ??= { document, texts: new Map() };
      waiting.whole = true;
      start();
    },
    busy: () => running,
  };
}
