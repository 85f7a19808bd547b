import type { Cell, CellKind } from '../../engine/index';

/** What follows from the design, as against what is set. */
const FOLLOWS: ReadonlySet<CellKind> = new Set([
  'chart',
  'table',
  'trial_series',
  'tolerances',
  'what_helps',
  'fit',
  'variants',
  'what_mends',
  'best_compromises',
  'weighing',
]);

/** Tables with so many columns that half of a wide window cuts them. */
const WHOLE: ReadonlySet<CellKind> = new Set(['parts', 'log', 'fit', 'variants', 'what_mends', 'best_compromises']);

/** A folded piece is two lines, an open one takes room: about so many lines, and so many where its kind is tall. */
const FOLDED_LINES = 2;
const OPEN_LINES = 8;
const TALL: Partial<Record<CellKind, number>> = { chart: 20, table: 20, tolerances: 30, what_helps: 35, model: 25 };

/** Lines by which a sheet must become shorter for a piece that follows to stand with what is set. */
const WORTH_IT = 5;

const linesOf = ({ kind, folded }: Cell): number => (folded ? FOLDED_LINES : (TALL[kind] ?? OPEN_LINES));
const room = (cells: readonly Cell[]): number => cells.reduce((sum, cell) => sum + linesOf(cell), 0);

/** A sheet on a wide window from the top: pieces that stand side by side in two columns, and between them those that take both. */
export function bandsOf(column: readonly Cell[]): readonly (readonly (readonly Cell[])[])[] {
  const bands: (readonly (readonly Cell[])[])[] = [];
  let run: Cell[] = [];
  const end = (): void => {
    if (run.length > 0) bands.push(run.length === 1 ? [run] : sidesOf(run));
    run = [];
  };
  for (const cell of column) {
    if (!WHOLE.has(cell.kind)) {
      run.push(cell);
      continue;
    }
    end();
    bands.push([[cell]]);
  }
  end();
  return bands;
}

/**
 * The two columns of a wide window: what is set, and what follows. The last of what follows stand with what is set where that
 * leaves much room. In each column the numbers rise. Where a sheet has only one of the two, its pieces are cut in the middle, so
 * that neither column is empty.
 */
function sidesOf(column: readonly Cell[]): readonly [readonly Cell[], readonly Cell[]] {
  const set = column.filter((cell) => !FOLLOWS.has(cell.kind));
  const follow = column.filter((cell) => FOLLOWS.has(cell.kind));
  if (set.length > 0 && follow.length > 0) {
    let stay = follow.length;
    while (stay > 1 && room(set) + room(follow.slice(stay - 1)) + WORTH_IT <= room(follow.slice(0, stay))) stay--;
    const right = new Set(follow.slice(0, stay));
    return [column.filter((cell) => !right.has(cell)), column.filter((cell) => right.has(cell))];
  }
  const half = room(column) / 2;
  let cut = 0;
  while (cut < column.length && room(column.slice(0, cut + 1)) <= half) cut++;
  return [column.slice(0, Math.max(cut, 1)), column.slice(Math.max(cut, 1))];
}
