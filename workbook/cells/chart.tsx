import type { ChartCell } from '../../engine/index';
import { SweepChart } from '../charts/index';
import { useSheet } from '../store/context';
import { useOnScreen } from '../store/on-screen';

/** A chart of a sweep. Its sweep runs while the chart is on the screen. */
export function ChartView({ cell }: { cell: ChartCell }) {
  const sheet = useSheet();
  const watched = useOnScreen(() => sheet.sweeps.watch(cell.sweep));
  const progress = sheet.sweeps.progress(cell.sweep).value;
  const snapshot = sheet.snapshot.value;
  return (
    <div class="chart" ref={watched} data-chart={cell.name}>
      {progress?.state === 'fault' && <p class="fault-flag fault">{progress.message}</p>}
      {progress && snapshot && progress.state !== 'fault' ? (
        <SweepChart
          cell={cell}
          progress={progress}
          names={sheet.names.value}
          values={snapshot.values}
          baseline={snapshot.baseline}
          checks={sheet.checks.value}
          optionTitle={sheet.optionTitle}
        />
      ) : (
        <div class="chart-room" />
      )}
    </div>
  );
}
