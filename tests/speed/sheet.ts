import quern from '../../data/designs/quern-25.tetherwright.json?raw';
import type { Sheet } from '../../engine/sheet/document';
import { openText } from '../../engine/sheet/file';
import { library, startEngine } from '../../engine/study/index';
import type { SweepProgress } from '../../engine/terms/index';
import { shownOf } from '../../workbook/store/shown';
import demo from '../designs/quern.tetherwright.json?raw';

/** Milliseconds, each the median. */
export interface SheetTimes {
  /** Opening the demo: compile and run everything. */
  readonly open: number;
  /** One move of each variable's slide: what follows from it, with flight, faults and drawing. */
  readonly move: Readonly<Record<string, number>>;
  /** Designs a second of each of the demo's sweeps. */
  readonly designs: Readonly<Record<string, number>>;
}

const VARIABLES = {
  engine_station: [-165, 'mm'],
  tip_weight: [12, 'g'],
  line_length: [16, 'm'],
  guide_x: [50, 'mm'],
} as const;
const SWEEPS = ['balance_sweep', 'pull_sweep'];
const MOVES = 300;
const WARM = 50;
const RUNS = 60;

/** How long the engine takes for what a finger on a slide asks of it, in Node. */
export async function measureSheet(): Promise<SheetTimes> {
  const opened = openText(demo);
  if (!opened.ok) throw new Error(opened.message);
  const now = (): number => performance.now();
  const engine = startEngine(library, { pause: () => Promise.resolve(), now });
  const times = async (count: number, act: (k: number) => Promise<unknown>): Promise<number> => {
    const spent: number[] = [];
    for (let k = 0; k < count; k++) {
      const before = now();
      await act(k);
      spent.push(now() - before);
    }
    return median(spent.slice(Math.min(WARM, count >> 1)));
  };
  const open = await times(40, () =>
    startEngine(library, { pause: () => Promise.resolve(), now }).open(opened.document),
  );
  await engine.open(opened.document);
  const move: Record<string, number> = {};
  for (const [variable, [from, unit]] of Object.entries(VARIABLES)) {
    move[variable] = await times(MOVES, (k) => engine.set([[variable, `${from + 0.01 * k} ${unit}`]]));
  }
  const designs: Record<string, number> = {};
  for (const sweep of SWEEPS) {
    let rows = 0;
    const count = (progress: SweepProgress): void => {
      rows = progress.total;
    };
    const spent = await times(RUNS, () => engine.sweep({ sweep }, count));
    designs[sweep] = rows / (spent / 1000);
  }
  return { open, move, designs };
}

function median(values: number[]): number {
  return values.sort((a, b) => a - b)[values.length >> 1] ?? Number.NaN;
}

/** What a move of a slide of the design that comes with the program costs the engine, ms each the median. */
export interface MoveTimes {
  /** With the sheet of the slide on the screen: what is slow and stands elsewhere waits. */
  readonly shown: number;
  readonly whole: number;
}

const SLIDES = {
  engine_station: [-165, 'mm'],
  line_length: [17, 'm'],
  axle_x: [-40, 'mm'],
  tank_height: [2, 'mm'],
  handle_spacing: [100, 'mm'],
} as const;

/** One move with everything and one with what is shown take turns, so that the machine is the same for both. */
export async function measureMoves(): Promise<Readonly<Record<string, MoveTimes>>> {
  const opened = openText(quern);
  if (!opened.ok) throw new Error(opened.message);
  const { document } = opened;
  const engine = startEngine(library, { pause: () => Promise.resolve(), now: () => performance.now() });
  await engine.open(document);
  const found: Record<string, MoveTimes> = {};
  for (const [variable, [from, unit]] of Object.entries(SLIDES)) {
    const holds = ({ pieces }: Sheet): boolean =>
      pieces.some((piece) => piece.kind === 'variables' && piece.rows.some(({ name }) => name === variable));
    const shown = shownOf(document, document.sheets.find(holds)!);
    const spent: [shown: number[], whole: number[]] = [[], []];
    for (let k = 0; k < 2 * RUNS; k++) {
      const before = performance.now();
      await engine.set([[variable, `${from + 0.01 * k} ${unit}`]], k % 2 === 0 ? shown : undefined);
      spent[k % 2]!.push(performance.now() - before);
    }
    const [some, whole] = spent.map((times) => median(times.slice(times.length >> 1))) as [number, number];
    found[variable] = { shown: some, whole };
  }
  return found;
}
