import type { Cell } from '../../../engine/index';
import { useSheet } from '../../store/context';
import { tooOldForPaper } from '../../store/printing';
import { progressWords } from './progress-words';

/** How far a sweep or a spread has come, how long it still takes, and the ways to end it and to begin it again. */
export function SweepProgressLine({ cell }: { cell: Pick<Cell, 'name' | 'title'> }) {
  const { sweeps, snapshot } = useSheet();
  const told = sweeps.progress(cell.name).value;
  const progress = tooOldForPaper(() => sweeps.madeFor(cell.name).value, snapshot.value) ? undefined : told;
  if (progress?.state === 'fault') return <p class="fault-flag fault">{progress.message}</p>;
  const { done = 0, total = 0 } = progress ?? {};
  return (
    <div class="sweep-run">
      <div
        class="progress"
        role="progressbar"
        aria-label={`Designs computed of ${cell.title}`}
        aria-valuemin={0}
        aria-valuemax={total || 1}
        aria-valuenow={done}
        aria-valuetext={progressWords(progress)}
      >
        <span class="progress-line" style={{ width: `${(100 * done) / (total || 1)}%` }} />
        <span class="progress-words">{progressWords(progress)}</span>
      </div>
      {progress?.state === 'running' && progress.left !== undefined && (
        <button type="button" class="word" onClick={() => sweeps.stop(cell.name)}>
          Stop<span class="unseen"> {cell.title}</span>
        </button>
      )}
      {progress?.state === 'stopped' && (
        <button type="button" class="word" onClick={() => sweeps.again(cell.name)}>
          Compute all<span class="unseen"> of {cell.title}</span>
        </button>
      )}
    </div>
  );
}
