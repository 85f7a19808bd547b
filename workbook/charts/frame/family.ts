import { fromSI, type NameInfo, type SweepAxisValues, type SweepProgress } from '../../../engine/index';
import { valueAt, valueText } from '../../drawing/index';
import { type Measure, measure, sampleAt } from './measure';
import type { SweepChartProps } from './props';
import { inSentence, withoutSharedEnd } from './words';

/** One line of the family: the samples along `across` at one value of `lines`. */
export interface FamilyLine {
  readonly key: string;
  readonly label: string;
  /** Sample numbers in order of the values across. */
  readonly samples: readonly number[];
  /** The present design lies on this line. */
  readonly present: boolean;
}

/** A design on a panel, in the numbers of its axes. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

export interface Panel extends Measure {
  /** Sample → SI value; missing when the sweep was not asked for it. */
  readonly column: Float64Array | undefined;
  readonly now: Spot | undefined;
  readonly baseline: Spot | undefined;
  /** The baseline's own line, y NaN where it has no answer; empty where there is none or where it is one of the family. */
  readonly ghost: readonly Spot[];
  /** Variants, in their order; each with its own line, as the baseline. */
  readonly others: readonly OtherSpot[];
}

interface OtherSpot {
  readonly name: string;
  readonly spot: Spot | undefined;
  readonly ghost: readonly Spot[];
}

/** A sweep as a chart of lines reads it. */
export interface Family {
  readonly across: Measure;
  /** SI values along `across`. */
  readonly acrossValues: Float64Array;
  readonly options: readonly string[] | undefined;
  readonly lines: readonly FamilyLine[];
  readonly panels: readonly Panel[];
  /** Axes that this chart does not show, at the value nearest to the present design. */
  readonly held: readonly string[];
}

/** Index of the axis value nearest to a value. */
function nearest(axis: SweepAxisValues, value: number | undefined): number {
  let best = 0;
  if (value === undefined) return best;
  for (let k = 1; k < axis.values.length; k++) {
    if (Math.abs(axis.values[k]! - value) < Math.abs(axis.values[best]! - value)) best = k;
  }
  return best;
}

const same = (a: number, b: number | undefined): boolean =>
  b !== undefined && Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b));

function spotOf(across: NameInfo, up: NameInfo, values: Float64Array | undefined): Spot | undefined {
  const x = values?.[across.slot];
  const y = values?.[up.slot];
  if (x === undefined || y === undefined || !Number.isFinite(x + y)) return undefined;
  return { x: fromSI(x, across.unit), y: fromSI(y, up.unit) };
}

const optionTitle = (props: SweepChartProps, path: string, name: string): string =>
  props.optionTitle?.(path, name) ?? name.replaceAll('_', ' ');

function linesOf(
  progress: SweepProgress,
  acrossAxis: number,
  linesAxis: number,
  strides: readonly number[],
  start: number,
  props: SweepChartProps,
): FamilyLine[] {
  const samplesFrom = (first: number): number[] =>
    Array.from(progress.axes[acrossAxis]!.values, (_, k) => first + k * strides[acrossAxis]!);
  if (linesAxis < 0) return [{ key: 'all', label: '', samples: samplesFrom(start), present: true }];
  const axis = progress.axes[linesAxis]!;
  const present = valueAt(axis.path, props.names, props.values);
  return readLines(props, axis.path).map((label, k) => ({
    key: `${axis.path} ${k}`,
    label,
    samples: samplesFrom(start + k * strides[linesAxis]!),
    present: same(axis.values[k]!, present),
  }));
}

/** What the values of one axis are called. */
export function readLines(props: SweepChartProps, path: string): readonly string[] {
  const axis = props.progress.axes.find((each) => each.path === path);
  const info = props.names.get(path);
  const titles = Array.from(axis?.values ?? [], (value) => {
    const name = info?.options?.[value];
    if (name !== undefined) return optionTitle(props, path, name);
    return info ? valueText(info, value) : String(value);
  });
  return withoutSharedEnd(titles);
}

/** Reads a sweep for a chart; a sentence where the chart asks for what the sweep does not have. */
export function readFamily(props: SweepChartProps): Family | string {
  const { cell, progress, names, values, baseline } = props;
  const info = names.get(cell.across);
  const titleOf = (path: string): string => inSentence(names.get(path)?.title ?? `“${path}”`);
  const acrossAxis = progress.axes.findIndex((a) => a.path === cell.across);
  if (!info || acrossAxis < 0)
    return `The trial series does not run along ${titleOf(cell.across)}. Choose one of its axes.`;
  const linesAxis = cell.lines === '' ? -1 : progress.axes.findIndex((a) => a.path === cell.lines);
  if (cell.lines !== '' && linesAxis < 0) {
    return `The trial series does not run along ${titleOf(cell.lines)}. Choose one of its axes for the lines, or none.`;
  }

  const strides = progress.axes.map((_, k) => progress.axes.slice(k + 1).reduce((n, a) => n * a.values.length, 1));
  const held: string[] = [];
  let start = 0;
  for (const [k, axis] of progress.axes.entries()) {
    if (k === acrossAxis || k === linesAxis) continue;
    const index = nearest(axis, valueAt(axis.path, names, values));
    start += index * strides[k]!;
    const heldInfo = names.get(axis.path);
    if (heldInfo) held.push(`${heldInfo.title} ${valueText(heldInfo, axis.values[index]!)}`);
  }

  const acrossValues = progress.axes[acrossAxis]!.values;
  const lines = linesOf(progress, acrossAxis, linesAxis, strides, start, props);

  const panels = cell.up.flatMap((path): Panel[] => {
    const up = names.get(path);
    if (!up) return [];
    const column = progress.columns[progress.wanted.indexOf(path)];
    const now = spotOf(info, up, values);
    const line = (ghost: SweepProgress | undefined): Spot[] => ghostOf({ ...props, ghost }, info, up, column, lines);
    const others = (props.others ?? []).map((other) => ({
      name: other.name,
      spot: spotOf(info, up, other.values),
      ghost: line(other.ghost),
    }));
    return [{ ...measure(up), column, now, baseline: spotOf(info, up, baseline), ghost: line(props.ghost), others }];
  });
  if (panels.length === 0) return `${cell.up.join(', ')}: no such result. Choose a result for the chart.`;
  return {
    across: measure(info),
    acrossValues,
    options: info.options?.map((name) => optionTitle(props, info.path, name)),
    lines,
    panels,
    held,
  };
}

/** The baseline along what is across. A line of the family that says the same all along stands for it. */
function ghostOf(
  { cell, ghost }: SweepChartProps,
  across: NameInfo,
  up: NameInfo,
  column: Float64Array | undefined,
  lines: readonly FamilyLine[],
): Spot[] {
  const own = ghost?.columns[ghost.wanted.indexOf(up.path)];
  const [axis] = ghost?.axes ?? [];
  if (!ghost || !own || axis?.path !== cell.across) return [];
  const twin = lines.some((line) => line.samples.every((sample, k) => same(own[k]!, column?.[sample])));
  if (twin) return [];
  return Array.from(axis.values, (x, k) => {
    const y = sampleAt(ghost, own, k);
    return { x: fromSI(x, across.unit), y: typeof y === 'number' ? fromSI(y, up.unit) : Number.NaN };
  });
}

/** Points of a line on a panel in the numbers of its axes: y is NaN where there is no answer, a sample not yet computed is left out. */
export function linePoints(family: Family, panel: Panel, line: FamilyLine, progress: SweepProgress): Spot[] {
  const points: Spot[] = [];
  if (!panel.column) return points;
  for (const [k, sample] of line.samples.entries()) {
    const value = sampleAt(progress, panel.column, sample);
    if (value === undefined) continue;
    points.push({
      x: family.across.shown(family.acrossValues[k]!),
      y: value === 'gap' ? Number.NaN : panel.shown(value),
    });
  }
  return points;
}

/** A line's answers as SI pairs, in order across; gaps and samples not yet computed are left out. */
export function answersOf(
  family: Family,
  panel: Panel,
  line: FamilyLine,
  progress: SweepProgress,
): { x: number; y: number }[] {
  if (!panel.column) return [];
  return line.samples.flatMap((sample, k) => {
    const y = sampleAt(progress, panel.column!, sample);
    return typeof y === 'number' ? [{ x: family.acrossValues[k]!, y }] : [];
  });
}
