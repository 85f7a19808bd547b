import { useComputed, useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { type ChartCell, chartNeeds, chartSource, textAt } from '../../../engine/index';
import { Chart, type ChartProps, type Hand } from '../../charts/index';
import { useSheet } from '../../store/context';
import { useOnScreen } from '../../store/on-screen';
import { printing, tooOldForPaper } from '../../store/printing';
import type { Sheet } from '../../store/sheet';
import { Remade } from '../shared/remade';
import { SetUp } from '../shared/set-up';
import { ChartForm } from './form';

type Drawn = ChartProps | { readonly fault: string };

/**
 * A chart of a sweep, of a weight and balance table or of what runs along something. What it is drawn from is computed while
 * it is on the screen; one that isn't is drawn again when the sheet has come to rest, so that it is there when the sheet is
 * scrolled or printed.
 */
export function ChartView({ cell }: { cell: ChartCell }) {
  const sheet = useSheet();
  const here = useSignal(false);
  const watched = useOnScreen(() => {
    const leave = watchSource(cell, sheet);
    here.value = true;
    return () => {
      here.value = false;
      leave();
    };
  }, `${cell.chart} ${cell.series} ${cell.of}`);
  const follows = useComputed(() => here.value || printing.value || sheet.state.value.kind !== 'working').value;
  const last = useRef<Drawn | undefined>(undefined);
  // A kind or a sweep that was chosen anew has nothing to do with what stood here.
  if (last.current && 'cell' in last.current && !sameSource(last.current.cell, cell)) last.current = undefined;
  if (follows) last.current = drawn(cell, sheet) ?? (printing.value ? undefined : last.current);
  // What the chart asks for in vain is said above it.
  const faulty = sheet.faultAt(cell.name) !== undefined;
  return (
    <div class="chart" ref={watched} data-chart={cell.name}>
      {!faulty && <Content of={last.current} asks={cell.series !== '' || (cell.of ?? '') !== ''} />}
      <Remade of={axesOf(cell, sheet)} />
      <SetUp title="Set up this chart" open={faulty}>
        <ChartForm cell={cell} />
      </SetUp>
    </div>
  );
}

function Content({ of, asks }: { of: Drawn | undefined; asks: boolean }) {
  if (!of) {
    return (
      <div class="chart-room" aria-busy={asks}>
        {asks && printing.value && (
          <p class="on-paper">Not computed yet when this was printed. “Print” at the top waits for it.</p>
        )}
      </div>
    );
  }
  return 'fault' in of ? <p class="fault-flag fault">{of.fault}</p> : <Chart {...of} />;
}

/** What the series that it is drawn from changes. */
function axesOf({ series }: ChartCell, sheet: Sheet): readonly string[] {
  const sweep = sheet.cells.value.find((each) => each.kind === 'trial_series' && each.name === series);
  return sweep?.kind === 'trial_series' ? sweep.axes.map(({ of }) => of) : [];
}

const sameSource = (a: ChartCell, b: ChartCell): boolean =>
  a.chart === b.chart && a.series === b.series && a.of === b.of;

function watchSource(cell: ChartCell, sheet: Sheet): () => void {
  switch (chartSource(cell)) {
    case 'sweep':
      return cell.series === '' ? () => {} : sheet.sweeps.watch(cell.series);
    case 'trace':
      return cell.of ? sheet.traces.watch(cell.of) : () => {};
    case 'parts':
      return () => {};
  }
}

/** Moves the present design from a chart: what is typed as a plain number can be moved, what is calculated cannot. */
const handOf = (sheet: Sheet): Hand => ({
  takes(path) {
    const info = sheet.name(path);
    if (!info?.settable || info.options) return false;
    const text = textAt(sheet.document.value, path) ?? '';
    return text === '' || !sheet.isComputed(text, info.unit);
  },
  move: sheet.drag,
  rest: sheet.rest,
});

/** What the sheet has for a chart now; undefined where nothing is computed yet. */
function drawn(cell: ChartCell, sheet: Sheet): Drawn | undefined {
  const snapshot = sheet.snapshot.value;
  if (!snapshot) return undefined;
  const { values, baseline } = snapshot;
  const checks = sheet.checks.value.filter((check) => cell.checks?.includes(check.name) ?? true);
  const { names, moving, optionTitle, taker } = sheet;
  const hand = handOf(sheet);
  const common = { cell, names: names.value, values, baseline, moving: moving.value, checks, optionTitle, hand, taker };
  switch (chartSource(cell)) {
    case 'sweep': {
      const progress = cell.series === '' ? undefined : sheet.sweeps.progress(cell.series).value;
      if (progress?.state === 'fault') return { fault: progress.message ?? '' };
      const madeFor = (): number => sheet.sweeps.madeFor(cell.series).value;
      if (!progress || tooOldForPaper(madeFor, snapshot)) return undefined;
      // The rows of a spread are fewer than the samples that it takes.
      if (progress.spread) return { ...common, progress: { ...progress, total: progress.why.length } };
      const along = baseline !== undefined && chartNeeds[cell.chart].across === 'axis';
      const across = chartNeeds[cell.chart].across === 'axis';
      const others = sheet.variantGhosts.value.map(({ name, values: own }) => ({
        ...{ name, values: own },
        ghost: across ? sheet.sweeps.ghost(cell.series, [cell.across], name).value : undefined,
      }));
      const ghost = along ? sheet.sweeps.ghost(cell.series, [cell.across]).value : undefined;
      return { ...common, progress, ghost, others };
    }
    case 'parts': {
      const others = sheet.variantGhosts.value;
      const parts = sheet.cells.value.find((each) => each.kind === 'parts' && each.name === cell.of);
      return parts?.kind === 'parts' ? { ...common, parts, others } : undefined;
    }
    case 'trace': {
      const trace = cell.of ? sheet.traces.of(cell.of).value : undefined;
      if (!trace || tooOldForPaper(() => trace.revision, snapshot)) return undefined;
      const others = sheet.variantGhosts.value.map(({ name, values: own }) => ({
        ...{ name, values: own, trace: sheet.traces.ghost(trace.path, name).value },
      }));
      return { ...common, trace, others };
    }
  }
}
