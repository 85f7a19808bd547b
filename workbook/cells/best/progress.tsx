import type { BestCell } from '../../../engine/index';
import { useSheet } from '../../store/context';
import { searchWords } from './words';

/** How far a search has come, and the ways to end it and to begin it again. */
export function BestProgressLine({ cell }: { cell: BestCell }) {
  const { bests } = useSheet();
  const working = bests.working(cell.name).value;
  const progress = bests.progress(cell.name).value;
  const halted = bests.of(cell.name).value?.state === 'halted';
  if (working) {
    const { tried = 0, grid = 1, round = 0, rounds = 1 } = progress ?? {};
    // Half for the first grid, half for looking closer.
    const share = round === 0 ? (50 * tried) / grid : 50 + (50 * round) / (rounds + 1);
    return (
      <div class="sweep-run">
        <div
          class="progress"
          role="progressbar"
          aria-label={`Designs tried of ${cell.title}`}
          aria-valuemin={0}
          aria-valuemax={100}
          aria-valuenow={Math.round(share)}
          aria-valuetext={searchWords(progress)}
        >
          <span class="progress-line" style={{ width: `${share}%` }} />
          <span class="progress-words">{searchWords(progress)}</span>
        </div>
        {progress && (
          <button type="button" class="word" onClick={() => bests.halt(cell.name)}>
            Stop<span class="unseen"> {cell.title}</span>
          </button>
        )}
      </div>
    );
  }
  return halted ? (
    <button type="button" class="word" onClick={() => bests.again(cell.name)}>
      Try all<span class="unseen"> of {cell.title}</span>
    </button>
  ) : null;
}
