import { type ReadonlySignal, signal } from '@preact/signals';
import type { EngineService, TableAnswer, TableView } from '../../engine/index';

/** The rows of one table as they are scrolled to. */
export interface TableFeed {
  /** The last rows that came, of whatever view and place; undefined before the first. */
  readonly answer: ReadonlySignal<TableAnswer | undefined>;
  /** What is shown isn't what was asked for last. */
  readonly behind: ReadonlySignal<boolean>;
  /** Asks for these rows. While an answer is out, only the last asking counts. */
  want(view: TableView, from: number, to: number): void;
}

export function createTableFeed(engine: Pick<EngineService, 'table'>, onFault: (message: string) => void): TableFeed {
  const answer = signal<TableAnswer | undefined>(undefined);
  const behind = signal(false);
  let waiting: Parameters<EngineService['table']> | undefined;
  let running = false;

  async function run(): Promise<void> {
    running = true;
    while (waiting) {
      const asked = waiting;
      waiting = undefined;
      try {
        const came = await engine.table(...asked);
        // Until the sweep is computed anew, the rows of the design before stay.
        if (came.state === 'ready') answer.value = came;
        behind.value = came.state === 'waits';
      } catch (error) {
        onFault(error instanceof Error ? error.message : String(error));
      }
    }
    running = false;
  }

  return {
    answer,
    behind,
    want(...asked) {
      waiting = asked;
      if (!running) void run();
    },
  };
}
