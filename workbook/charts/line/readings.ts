import { formatNumber, formatQuantity } from '../../../engine/index';
import { type Family, type Measure, type Panel, sampleAt } from '../frame/family';
import type { TableData } from '../frame/figures';
import type { SweepChartProps } from '../frame/props';
import type { ReadSeries } from '../frame/readings';
import type { ChartLayout } from './layout';

/** "Engine station −150 mm". */
export const measured = ({ info }: Measure, si: number): string =>
  `${info.title} ${formatQuantity(si, info.unit, { suffix: info.suffix })}`;

/** What stands across at one place of the family: a number with its unit, or the option. */
export const acrossText = (family: Family, k: number): string => {
  const value = family.acrossValues[k]!;
  const option = family.options?.[value];
  return option === undefined ? measured(family.across, value) : option;
};

/** Every answered point of every line, panel by panel. */
export function lineReadings(
  family: Family,
  { progress }: Pick<SweepChartProps, 'progress'>,
  chart: ChartLayout,
): ReadSeries[] {
  return chart.panels.flatMap((drawn) =>
    family.panels
      .filter(({ path }) => drawn.panel.shows.includes(path))
      .flatMap((panel) =>
        family.lines.map(
          (line): ReadSeries => ({
            name: line.label,
            plot: drawn.box,
            points: line.samples.flatMap((sample, k) => {
              const value = panel.column && sampleAt(progress, panel.column, sample);
              if (typeof value !== 'number') return [];
              const at = { x: chart.x(family.across.shown(family.acrossValues[k]!)), y: drawn.y(panel.shown(value)) };
              return [{ at, lines: [acrossText(family, k), measured(panel, value)] }];
            }),
          }),
        ),
      ),
  );
}

/** One row for each value across, one column for each line of each panel. */
export function lineTable(family: Family, { progress }: Pick<SweepChartProps, 'progress'>): TableData {
  const named = family.lines.some((line) => line.label !== '');
  const columns = family.panels.flatMap((panel) => family.lines.map((line) => ({ panel, line })));
  return {
    head: [
      [
        { text: family.across.title, rows: named ? 2 : 1 },
        ...family.panels.map((panel) => ({ text: panel.title, columns: family.lines.length })),
      ],
      ...(named ? [columns.map(({ line }) => ({ text: line.label }))] : []),
    ],
    rows: Array.from(family.acrossValues, (value, k) => ({
      head: family.options?.[value] ?? formatNumber(family.across.shown(value)),
      cells: columns.map(({ panel, line }) => figure(panel, progress, line.samples[k]!)),
    })),
  };
}

/** An empty place where nothing is computed yet, a dash where there is no answer. */
function figure(panel: Panel, progress: SweepChartProps['progress'], sample: number): string {
  const value = panel.column && sampleAt(progress, panel.column, sample);
  if (value === undefined) return '';
  return value === 'gap' ? '–' : formatNumber(panel.shown(value));
}
