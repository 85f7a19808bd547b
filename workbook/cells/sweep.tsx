import type { Axis, NameInfo, SweepCell } from '../../engine/index';
import { useSheet } from '../store/context';
import { useOnScreen } from '../store/on-screen';

/** What is swept, what is asked for, and how far it has come. */
export function SweepView({ cell }: { cell: SweepCell }) {
  const sheet = useSheet();
  const watched = useOnScreen(() => sheet.sweeps.watch(cell.name));
  const progress = sheet.sweeps.progress(cell.name).value;
  const titles = cell.wanted.map((path) => sheet.name(path)?.title ?? path);
  return (
    <div class="sweep" ref={watched}>
      <ul class="sweep-axes">
        {cell.axes.map((axis) => (
          <li key={axis.of}>{axisWords(axis, sheet.name(axis.of))}</li>
        ))}
      </ul>
      <p>Asked for: {titles.join(', ')}.</p>
      {progress?.state === 'fault' ? (
        <p class="fault-flag fault">{progress.message}</p>
      ) : (
        <div
          class="progress"
          role="progressbar"
          aria-label={`Designs computed of ${cell.title}`}
          aria-valuemin={0}
          aria-valuemax={progress?.total ?? 1}
          aria-valuenow={progress?.done ?? 0}
        >
          <span class="progress-line" style={{ width: `${(100 * (progress?.done ?? 0)) / (progress?.total || 1)}%` }} />
          <span class="progress-words">
            {progress ? `${progress.done} of ${progress.total} designs` : 'not yet computed'}
          </span>
        </div>
      )}
    </div>
  );
}

/** What one axis runs over, in words. */
function axisWords(axis: Axis, info: NameInfo | undefined): string {
  const title = info?.title ?? axis.of;
  if (info?.options) return `${title}: ${axis.options ? axis.options.join(', ') : 'every option'}`;
  const range = axis.low === '' && axis.high === '' ? 'along its slide' : `${axis.low} to ${axis.high}`;
  return `${title}: ${axis.count} values, ${range}`;
}
