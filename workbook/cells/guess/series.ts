import type { GuessCell, SweepCell, SweepProgress } from '../../../engine/index';
import type { Guessed } from '../../charts/index';
import type { Sheet } from '../../store/sheet';

/** What a line is guessed of, as far as it is computed; undefined until all of it is. */
export function guessedOf(cell: GuessCell, sheet: Sheet, shown: boolean): Guessed | undefined {
  const sweep = sheet.cells.value.find(
    (each): each is SweepCell => each.kind === 'trial_series' && each.name === cell.series,
  );
  const [axis] = sweep?.axes ?? [];
  const across = axis && sheet.name(axis.of);
  const up = sheet.name(cell.of);
  const progress = cell.series === '' ? undefined : sheet.sweeps.progress(cell.series).value;
  if (!across || !up || !progress || progress.done < progress.total || progress.axes.length !== 1) return undefined;
  const ys = answersOf(progress, cell.of);
  if (!ys) return undefined;
  return {
    ...{ across, up, shown, xs: progress.axes[0]!.values, ys },
    now: { x: sheet.value(across.path), y: sheet.value(up.path) },
    lines: cell.guesses.flatMap(({ by, line }) => (line ? [{ by, heights: line }] : [])),
  };
}

/** A result of every design of the series; NaN where it has no answer. */
function answersOf(progress: SweepProgress, of: string): number[] | undefined {
  const column = progress.columns[progress.wanted.indexOf(of)];
  return column && Array.from(column, (value, k) => (progress.why[k] === 0 ? value : Number.NaN));
}
