import { NOT_COMPUTED, type SweepAxisValues } from '../../../engine/index';
import { type Box, type Point, valueAt, valueText } from '../../drawing/index';
import { type Family, type Panel, readFamily, type Spot } from './family';
import { type Measure, measure, numberText, sampleAt } from './measure';
import type { SweepChartProps } from './props';
import type { Reading, ReadSeries } from './readings';
import type { DrawnSpot } from './spots';

/** A sweep over two axes, as far as it is computed. */
export interface Grid {
  readonly family: Family;
  /** The second axis. */
  readonly along: Measure;
  /** SI values of the columns (across) and rows (along) that are there, and their place among all values of the axis. */
  readonly columns: readonly GridLine[];
  readonly rows: readonly GridLine[];
  /** Present design and baseline in the numbers of both axes; undefined where one of them has no answer. */
  readonly now: Spot | undefined;
  readonly baseline: Spot | undefined;
  /** Variants, in their order. */
  readonly others: readonly (Spot | undefined)[];
}
export interface GridLine {
  readonly index: number;
  /** SI. */
  readonly si: number;
  /** In the unit of its axis. */
  readonly shown: number;
  readonly label: string;
  /** It is one of a list and no number. */
  readonly option: boolean;
}

/** Reads a sweep over two axes; a sentence where the chart asks for what isn't there. */
export function readGrid(props: SweepChartProps): Grid | string {
  const { cell, progress, names } = props;
  const family = readFamily(props);
  if (typeof family === 'string') return family;
  const axis = progress.axes.find((each) => each.path === cell.lines);
  const info = names.get(cell.lines);
  if (!axis || !info) return 'The trial series has no second axis for this chart. Choose one of its axes.';
  const along = measure(info);
  const across = axisLine(family.across, family.acrossValues, (si) => family.options?.[si] ?? family.across.text(si));
  const up = axisLine(along, axis.values, (_, k) => family.lines[k]!.label);
  const seen = (column: number, row: number): boolean =>
    progress.why[family.lines[row]!.samples[column]!] !== NOT_COMPUTED;
  return {
    family,
    along,
    // The last row and the last column belong to the coarse lattice and are filled last: what they have is there all over.
    columns: thinned(across.filter((_, k) => seen(k, up.length - 1))),
    rows: thinned(up.filter((_, k) => seen(across.length - 1, k))),
    now: spotAt(props, props.values),
    baseline: props.baseline && spotAt(props, props.baseline),
    others: (props.others ?? []).map((other) => spotAt(props, other.values)),
  };
}

/** Values of one axis that a picture over two is drawn from; more would make it slow and no finer. */
const MOST_LINES = 101;
function thinned(lines: readonly GridLine[]): readonly GridLine[] {
  if (lines.length <= MOST_LINES) return lines;
  const last = lines.length - 1;
  return Array.from({ length: MOST_LINES }, (_, k) => lines[Math.round((k * last) / (MOST_LINES - 1))]!);
}

/** Said where a grid is drawn from some of its designs only. */
export function thinnedSentence({ columns, rows }: Grid, { progress }: SweepChartProps): string {
  if (columns.length < MOST_LINES && rows.length < MOST_LINES) return '';
  const drawn = columns.length * rows.length;
  return drawn < progress.total ? `Drawn and counted from ${drawn} of ${progress.total} designs.` : '';
}

const axisLine = (
  of: Measure,
  values: SweepAxisValues['values'],
  label: (si: number, k: number) => string,
): GridLine[] =>
  Array.from(values, (si, index) => ({
    ...{ index, si, shown: of.shown(si), label: label(si, index) },
    option: of.info.options !== undefined,
  }));

function spotAt({ cell, names }: SweepChartProps, values: Float64Array): Spot | undefined {
  const x = valueAt(cell.across, names, values);
  const y = valueAt(cell.lines, names, values);
  const [across, along] = [names.get(cell.across), names.get(cell.lines)];
  if (x === undefined || y === undefined || !across || !along) return undefined;
  return { x: measure(across).shown(x), y: measure(along).shown(y) };
}

/** values[row][column] of one result in the unit in which it is shown; NaN where there is no answer. */
export function gridValues(grid: Grid, panel: Panel, { progress }: SweepChartProps): number[][] {
  return grid.rows.map((row) =>
    grid.columns.map((column) => {
      const sample = grid.family.lines[row.index]!.samples[column.index]!;
      const si = panel.column && sampleAt(progress, panel.column, sample);
      return typeof si === 'number' ? panel.shown(si) : Number.NaN;
    }),
  );
}

/** Where a design of the grid stands on both axes. */
export const placeTexts = ({ family, along, rows, columns }: Grid, row: number, column: number): string[] => [
  `${family.across.info.title} ${columns[column]!.label}`,
  `${along.info.title} ${rows[row]!.label}`,
];

/** The answered designs of one result, one series for each row of the grid. */
export const gridReadings = (
  grid: Grid,
  { info }: Panel,
  values: readonly (readonly number[])[],
  place: (row: number, column: number) => Point,
  { plot, now, passed }: GridRead,
): ReadSeries[] => {
  const rows = grid.rows.map((_, r) => ({
    name: '',
    plot,
    points: grid.columns.flatMap((_c, c) => {
      const value = values[r]![c]!;
      if (Number.isNaN(value)) return [];
      const said = `${info.title} ${numberText(info, value)}`;
      const sample = grid.family.lines[grid.rows[r]!.index]!.samples[grid.columns[c]!.index]!;
      return [{ at: place(r, c), sample, lines: [said, ...placeTexts(grid, r, c), ...passed(r, c)] }];
    }),
  }));
  return now ? [...rows, { name: '', plot, points: [now] }] : rows;
};

/** What the readings of a grid say beside its values. */
interface GridRead {
  readonly plot: Box;
  /** The present design, where it has a place. */
  readonly now: Reading | undefined;
  /** Limits that a design has passed. */
  passed(row: number, column: number): readonly string[];
}

/** The present design of a grid. */
export function gridNow(
  { across, lines }: SweepChartProps['cell'],
  { names, values }: SweepChartProps,
  { info }: Panel,
  spots: readonly DrawnSpot[],
): Reading | undefined {
  const spot = spots.find(({ kind }) => kind === 'now');
  const said = [info, names.get(across), names.get(lines)].flatMap((each) =>
    each ? [`${each.title} ${valueText(each, values[each.slot]!)}`] : [],
  );
  return spot && { at: spot.at, lines: ['Now', ...said] };
}
