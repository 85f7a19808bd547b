/** Which page of this browser works on a design. One at a time does; the others look. */
export interface Holding {
  /** Whether this page has the design now; if not, another one works on it. */
  hold(id: string): Promise<boolean>;
  /** Asks the page that has it to let go, and takes it away if there is no answer. */
  take(id: string): Promise<void>;
  release(id: string): void;
  /** Tells the others that the design was written. */
  stored(id: string): void;
}

export interface HoldingPorts {
  /** Missing where the browser has none: then only the revision in the store keeps pages apart. */
  readonly locks: LockManager | undefined;
  readonly channel: Pick<BroadcastChannel, 'postMessage' | 'addEventListener'> | undefined;
  /** Another page wants to work on the design: resolves when all of it is written. */
  onAsked(id: string): Promise<void>;
  /** Another page works on the design now. */
  onLost(id: string): void;
  onStored(id: string): void;
  /** Longest waits, ms. */
  readonly waits?: typeof WAITS;
}

interface Message {
  readonly kind: 'give' | 'stored';
  readonly id: string;
}

/** `reload`: a page that is loaded again meets its own lock for a moment. `answer`: another page has to write and let go. */
const WAITS = { reload: 400, answer: 1500 };

export function createHolding(ports: HoldingPorts): Holding {
  const { locks, channel, waits = WAITS } = ports;
  const held = new Map<string, () => void>();

  function request(id: string, options: LockOptions): Promise<boolean> {
    if (!locks) return Promise.resolve(true);
    return new Promise((resolve) => {
      const answer = locks.request(`tetherwright design ${id}`, options, (lock) => {
        resolve(lock !== null);
        return lock === null ? undefined : new Promise<void>((letGo) => held.set(id, letGo));
      });
      // It was waited for too long, or another page has taken it away.
      answer.catch(() => {
        resolve(false);
        if (held.delete(id)) ports.onLost(id);
      });
    });
  }

  const within = (id: string, time: number) => request(id, { signal: AbortSignal.timeout(time) });

  function release(id: string): void {
    const letGo = held.get(id);
    held.delete(id);
    letGo?.();
  }

  async function give(id: string): Promise<void> {
    if (!held.has(id)) return;
    await ports.onAsked(id);
    release(id);
    ports.onLost(id);
  }

  channel?.addEventListener('message', (event: MessageEvent<Message>) => {
    const { kind, id } = event.data;
    if (kind === 'give') void give(id);
    else ports.onStored(id);
  });

  return {
    hold: async (id) => held.has(id) || (await request(id, { ifAvailable: true })) || (await within(id, waits.reload)),
    async take(id) {
      channel?.postMessage({ kind: 'give', id });
      if (!(await within(id, waits.answer))) await request(id, { steal: true });
    },
    release,
    stored: (id) => channel?.postMessage({ kind: 'stored', id }),
  };
}
