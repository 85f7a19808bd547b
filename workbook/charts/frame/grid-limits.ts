import { type Grid, gridValues } from './grid';
import { type Zone, zonesOf } from './limits';
import { type Measure, measure } from './measure';
import type { SweepChartProps } from './props';

/** A limit with the values of the result that it is on. */
export interface GridLimit {
  readonly of: Measure;
  readonly zone: Zone;
  readonly values: readonly (readonly number[])[];
}

/** Every limit on what is shown; where the cell names its checks, those on other results of the sweep too. */
export function limitsOn(grid: Grid, props: SweepChartProps): GridLimit[] {
  const { cell, progress, names } = props;
  return (cell.checks ? progress.wanted : cell.up).flatMap((path) => {
    const info = names.get(path);
    if (!info) return [];
    const of = measure(info);
    const column = progress.columns[progress.wanted.indexOf(path)];
    const values = gridValues(
      grid,
      { ...of, column, now: undefined, baseline: undefined, ghost: [], others: [] },
      props,
    );
    return zonesOf(of, props.checks, names, props.values).map((zone) => ({ of, zone, values }));
  });
}

/** How many designs keep within every limit. */
export function withinSentence(props: SweepChartProps, grid: Grid): string {
  const limits = limitsOn(grid, props);
  if (limits.length === 0) return '';
  let answered = 0;
  let kept = 0;
  for (const r of grid.rows.keys()) {
    for (const c of grid.columns.keys()) {
      if (limits.some(({ values }) => Number.isNaN(values[r]![c]!))) continue;
      answered++;
      if (limits.every(({ values, zone }) => holds(values[r]![c]!, zone))) kept++;
    }
  }
  return answered === 0
    ? ''
    : `${kept} of ${answered} designs keep within the ${limits.length === 1 ? 'limit' : 'limits'}.`;
}

export const holds = (value: number, { side, limit }: Zone): boolean =>
  side === 'below' ? value >= limit : value <= limit;
