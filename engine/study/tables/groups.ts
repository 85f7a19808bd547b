import type { ColumnTable } from 'arquero';
import type { Measure } from '../../sheet/document';
import type { SweepAxisValues } from '../../terms/index';
import type { Column } from './column';
import type { TableView } from './told';

export interface Designs {
  readonly axes: readonly SweepAxisValues[];
  readonly numbers: ReadonlyMap<string, Float64Array>;
  readonly why: Uint16Array;
  readonly wanted: readonly string[];
}

export interface Groups {
  readonly columns: readonly Column[];
  /** Group that a design of the sweep belongs to; −1 where the view keeps no design of it. */
  groupOf(sample: number): number;
}

/** Rows that agree in some axes become one: how many there are, and what is said of their results. */
export function groupRows(kept: ColumnTable, view: TableView, designs: Designs): Groups {
  const { axes, numbers, why } = designs;
  const names = axes.map((axis) => axis.path).filter((path) => view.groups.includes(path));
  const along = stepsAlong(axes, names);
  const total = why.length;
  const groupAt = new Int32Array(along.count).fill(-1);
  const keys = new Uint32Array(total);
  const rows: number[] = [];
  const samples = kept.indices(false) as Uint32Array;
  for (const sample of samples) {
    const at = along.placeOf(sample);
    if (groupAt[at]! < 0) groupAt[at] = rows.push(sample) - 1;
    keys[sample] = groupAt[at]!;
  }
  const get = names.map((name) => (row: number) => numbers.get(name)![row]!);
  const grouped = kept.create({ groups: { names, get, rows, size: rows.length, keys } });
  const partitions = rows.length === 0 ? [] : (grouped.partitions(false) as ArrayLike<number>[]);
  const results = designs.wanted.filter((path) => view.columns.length === 0 || view.columns.includes(path));
  return {
    columns: [
      ...names.map((path) => ({
        key: path,
        path,
        numbers: Float64Array.from(rows, (row) => numbers.get(path)![row]!),
      })),
      count('count', partitions, () => true),
      count('unanswered', partitions, (sample) => why[sample] !== 0),
      ...results.flatMap((path) => roll(path, view.measures, partitions, numbers.get(path)!)),
    ],
    groupOf: (sample) => groupAt[along.placeOf(sample)]!,
  };
}

/** Numbers the combinations of some axes: the last of them runs fastest. */
function stepsAlong(axes: readonly SweepAxisValues[], names: readonly string[]) {
  const parts: { stride: number; size: number }[] = [];
  let stride = 1;
  for (const { path, values } of axes.toReversed()) {
    if (names.includes(path)) parts.unshift({ stride, size: values.length });
    stride *= values.length;
  }
  return {
    count: parts.reduce((product, { size }) => product * size, 1),
    placeOf: (sample: number): number =>
      parts.reduce((place, part) => place * part.size + (Math.floor(sample / part.stride) % part.size), 0),
  };
}

function count(
  key: 'count' | 'unanswered',
  partitions: readonly ArrayLike<number>[],
  counts: (sample: number) => boolean,
): Column {
  const numbers = Float64Array.from(partitions, (samples) => {
    let n = 0;
    for (let k = 0; k < samples.length; k++) if (counts(samples[k]!)) n++;
    return n;
  });
  return { key, path: '', measure: key, numbers };
}

function roll(
  path: string,
  measures: readonly Measure[],
  partitions: readonly ArrayLike<number>[],
  column: Float64Array,
): Column[] {
  const rolled = measures.map((measure) => ({ measure, numbers: new Float64Array(partitions.length) }));
  for (const [g, samples] of partitions.entries()) {
    const sorted = answersOf(samples, column);
    for (const { measure, numbers } of rolled) numbers[g] = measuresOf[measure](sorted);
  }
  return rolled.map(({ measure, numbers }) => ({ key: `${path} ${measure}`, path, measure, numbers }));
}

/** What there is of answers, in order. */
function answersOf(samples: ArrayLike<number>, column: Float64Array): Float64Array {
  const found = new Float64Array(samples.length);
  let n = 0;
  for (let k = 0; k < samples.length; k++) {
    const value = column[samples[k]!]!;
    if (!Number.isNaN(value)) found[n++] = value;
  }
  return found.subarray(0, n).sort();
}

/** Of numbers in order; NaN where there is none. */
const measuresOf: Readonly<Record<Measure, (sorted: Float64Array) => number>> = {
  least: (sorted) => sorted[0] ?? Number.NaN,
  greatest: (sorted) => sorted.at(-1) ?? Number.NaN,
  mean: (sorted) => sorted.reduce((sum, value) => sum + value, 0) / sorted.length,
  median(sorted) {
    const half = sorted.length >> 1;
    if (sorted.length === 0) return Number.NaN;
    return sorted.length % 2 === 1 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2;
  },
};
