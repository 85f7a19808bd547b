import { useComputed, useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import type { ChartCell } from '../../engine/index';
import { SweepChart, type SweepChartProps } from '../charts/index';
import { useSheet } from '../store/context';
import { useOnScreen } from '../store/on-screen';
import type { Sheet } from '../store/sheet';

type Drawn = SweepChartProps | { readonly fault: string };

/**
 * A chart of a sweep. Its sweep runs while the chart is on the screen; one that isn't is drawn again when the sheet has come
 * to rest, so that it is there when the sheet is scrolled or printed.
 */
export function ChartView({ cell }: { cell: ChartCell }) {
  const sheet = useSheet();
  const here = useSignal(false);
  const watched = useOnScreen(() => {
    const leave = sheet.sweeps.watch(cell.sweep);
    here.value = true;
    return () => {
      here.value = false;
      leave();
    };
  }, cell.sweep);
  const follows = useComputed(() => here.value || sheet.state.value.kind !== 'working').value;
  const last = useRef<Drawn | undefined>(undefined);
  if (follows) last.current = drawn(cell, sheet) ?? last.current;
  return (
    <div class="chart" ref={watched} data-chart={cell.name}>
      <Content of={last.current} />
    </div>
  );
}

function Content({ of }: { of: Drawn | undefined }) {
  if (!of) return <div class="chart-room" />;
  return 'fault' in of ? <p class="fault-flag fault">{of.fault}</p> : <SweepChart {...of} />;
}

/** What the sheet has for a chart now; undefined where nothing is computed yet. */
function drawn(cell: ChartCell, sheet: Sheet): Drawn | undefined {
  const progress = sheet.sweeps.progress(cell.sweep).value;
  const snapshot = sheet.snapshot.value;
  if (progress?.state === 'fault') return { fault: progress.message ?? '' };
  if (!progress || !snapshot) return undefined;
  return {
    cell,
    progress,
    names: sheet.names.value,
    values: snapshot.values,
    baseline: snapshot.baseline,
    ghost: snapshot.baseline && sheet.sweeps.ghost(cell.sweep, [cell.across]).value,
    moving: sheet.moving.value,
    checks: sheet.checks.value,
    optionTitle: sheet.optionTitle,
  };
}
