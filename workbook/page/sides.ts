import type { Cell, CellKind } from '../../engine/index';

/** What follows from the design, as against what is set. */
const FOLLOWS: ReadonlySet<CellKind> = new Set(['chart', 'table', 'trial_series', 'tolerances', 'what_helps', 'fit']);

/** Tables with so many columns that half of a wide window cuts them. */
const WHOLE: ReadonlySet<CellKind> = new Set(['parts', 'log', 'fit']);

/** A folded piece is a line, an open one takes room: about so many lines. */
const OPEN_LINES = 8;

const room = (cells: readonly Cell[]): number => cells.reduce((sum, cell) => sum + (cell.folded ? 1 : OPEN_LINES), 0);

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
 * The two columns of a wide window: what is set, and what follows. Where a sheet has only one of the two, its pieces are cut in
 * the middle, so that neither column is empty.
 */
function sidesOf(column: readonly Cell[]): readonly [readonly Cell[], readonly Cell[]] {
  const set = column.filter((cell) => !FOLLOWS.has(cell.kind));
  const follow = column.filter((cell) => FOLLOWS.has(cell.kind));
  if (set.length > 0 && follow.length > 0) return [set, follow];
  const half = room(column) / 2;
  let cut = 0;
  while (cut < column.length && room(column.slice(0, cut + 1)) <= half) cut++;
  return [column.slice(0, Math.max(cut, 1)), column.slice(Math.max(cut, 1))];
}
