import {
  type Cell,
  type ChartCell,
  chartNeeds,
  chartSource,
  PART_BARS,
  type SpreadCell,
  type SweepCell,
} from '../../../engine/index';

/** Something that runs along something, and what it tells: the first column runs along. */
export interface TraceOffer {
  readonly path: string;
  readonly title: string;
  /** Runs along an angle. */
  readonly round: boolean;
  readonly columns: readonly { readonly name: string; readonly title: string }[];
}
/** What a chart of this sheet can be drawn from. */
export interface Offer {
  readonly cells: readonly Cell[];
  readonly traces: readonly TraceOffer[];
  isChoice(path: string): boolean;
}

const sweepsOf = ({ cells }: Offer): readonly SweepCell[] => cells.filter((each) => each.kind === 'trial_series');
/** Sweeps and spreads that a kind of chart can be drawn from. */
export const sampledOf = (kind: ChartCell['chart'], { cells }: Offer): readonly (SweepCell | SpreadCell)[] => {
  const { spread } = chartNeeds[kind];
  return [
    ...(spread === 'only' ? [] : cells.filter((each) => each.kind === 'trial_series')),
    ...(spread ? cells.filter((each) => each.kind === 'tolerances') : []),
  ];
};
/** Results of each design that a chart can show: in a spread what differs is told too. */
export const resultsOf = (kind: ChartCell['chart'], source: SweepCell | SpreadCell | undefined): readonly string[] => {
  if (source?.kind !== 'tolerances' || chartNeeds[kind].spread === 'only') return source?.wanted ?? [];
  return [...new Set([...source.wanted, ...source.rows.map((row) => row.of)])];
};
/** Traces that a kind of chart can show. */
export const tracesOf = ({ traces }: Offer, chart: ChartCell['chart']): readonly TraceOffer[] =>
  chartNeeds[chart].round ? traces.filter(({ round }) => round) : traces;
/** Columns of a trace that can be shown against the one that runs along. */
export const shownOf = (trace: TraceOffer | undefined, cell: ChartCell): TraceOffer['columns'] => {
  const [first] = trace?.columns ?? [];
  const along = chartNeeds[cell.chart].across === 'column' && cell.across !== '' ? cell.across : first?.name;
  return (trace?.columns ?? []).filter(({ name }) => name !== along);
};
export const tablesOf = ({ cells }: Offer): readonly Cell[] => cells.filter((each) => each.kind === 'parts');

/** The chart with everything that its kind and its source still allow, and the first that there is in place of the rest. */
export function fitChart(cell: ChartCell, offer: Offer): ChartCell {
  const [first] = sweepsOf(offer);
  const [table] = tablesOf(offer);
  const { from } = chartNeeds[cell.chart];
  const named = (cell.of ?? '') !== '';
  // Of what may be drawn from either, the one that is named counts, else the one that is there.
  const either = from.length > 1 && !named && !first && table !== undefined;
  const source = either ? from[1]! : chartSource(cell);
  switch (source) {
    case 'sweep':
      return fitSweep(cell, offer);
    case 'parts': {
      const of = tablesOf(offer).find((each) => each.name === cell.of) ?? table;
      const up = cell.up.filter((name) => (PART_BARS as readonly string[]).includes(name));
      const shown = chartNeeds[cell.chart].up === 0 ? [] : up.length > 0 ? up : [PART_BARS[0]];
      return { ...cell, of: of?.name ?? '', up: shown };
    }
    case 'trace': {
      const traces = tracesOf(offer, cell.chart);
      const trace = traces.find((each) => each.path === cell.of) ?? traces[0];
      const known = trace?.columns.some(({ name }) => name === cell.across);
      const across =
        chartNeeds[cell.chart].across === 'column' && !known ? (trace?.columns[0]?.name ?? '') : cell.across;
      const columns = shownOf(trace, { ...cell, across });
      const up = cell.up
        .filter((name) => columns.some((column) => column.name === name))
        .slice(0, chartNeeds[cell.chart].up);
      const first = columns[0]?.name;
      return { ...cell, of: trace?.path ?? '', across, up: up.length > 0 || first === undefined ? up : [first] };
    }
  }
}

function fitSweep({ of: _, ...cell }: ChartCell, offer: Offer): ChartCell {
  const needs = chartNeeds[cell.chart];
  const sources = sampledOf(cell.chart, offer);
  const sweep = sources.find((each) => each.name === cell.series) ?? sources[0];
  if (!sweep) return cell;
  const all = sweep.kind === 'trial_series' ? sweep.axes.map((axis) => axis.of) : [];
  const axes = needs.numbers ? all.filter((path) => !offer.isChoice(path)) : all;
  const liked = cell.chart === 'bars' ? axes.find((path) => offer.isChoice(path)) : undefined;
  const wanted = resultsOf(cell.chart, sweep);
  const across = {
    axis: axes.includes(cell.across) ? cell.across : (liked ?? axes[0] ?? ''),
    result: wanted.includes(cell.across) ? cell.across : (wanted[0] ?? ''),
    column: '',
    nothing: '',
  }[needs.across];
  const others = axes.filter((path) => path !== across);
  const kept = others.includes(cell.lines) ? cell.lines : '';
  const lines = { axis: kept || (others[0] ?? ''), 'axis or nothing': kept, nothing: '' }[needs.lines];
  const shown = wanted.filter((path) => needs.across !== 'result' || path !== across);
  const up = cell.up.filter((path) => shown.includes(path)).slice(0, needs.up);
  return { ...cell, series: sweep.name, across, lines, up: up.length > 0 ? up : shown.slice(0, 1) };
}
