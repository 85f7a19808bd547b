import { NOT_COMPUTED, type SweepProgress } from '../../engine/index';

/**
 * What to show of a sweep after newer rows have come. Where they say nothing else than the rows before them, and not more,
 * those stay: a chart isn't drawn again for the same lines, nor loses its fine points to a coarse run while the finger moves
 * the very thing that is swept.
 */
export function newerProgress(before: SweepProgress | undefined, now: SweepProgress): SweepProgress {
  return before && before.done >= now.done && before.total === now.total && agrees(before, now) ? before : now;
}

function agrees(before: SweepProgress, now: SweepProgress): boolean {
  return (
    before.state === now.state &&
    before.message === now.message &&
    JSON.stringify(before.levers) === JSON.stringify(now.levers) &&
    sameVariants(before.variants, now.variants) &&
    same(before.wanted, now.wanted) &&
    same(before.sentences, now.sentences) &&
    before.axes.length === now.axes.length &&
    before.axes.every((axis, k) => axis.path === now.axes[k]?.path && same(axis.values, now.axes[k].values)) &&
    now.why.every((why, row) => why === NOT_COMPUTED || sameRow(before, now, row))
  );
}

const sameRow = (before: SweepProgress, now: SweepProgress, row: number): boolean =>
  before.why[row] === now.why[row] &&
  before.columns.every((column, w) => Object.is(column[row], now.columns[w]?.[row]));

/** What makes the differences is told once all is computed: until then what was told of it before may stand. */
function sameVariants(before: SweepProgress['variants'], now: SweepProgress['variants']): boolean {
  if (!before || !now) return before === now;
  const known = now.columns.map((column, k) =>
    column.shares ? column : { ...column, shares: before.columns[k]?.shares },
  );
  return JSON.stringify(before) === JSON.stringify({ ...now, columns: known });
}

const same = <T>(a: ArrayLike<T>, b: ArrayLike<T>): boolean =>
  a.length === b.length && Array.prototype.every.call(a, (each: T, k: number) => Object.is(each, b[k]));
