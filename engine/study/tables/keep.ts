import type { KeptRange, TableView } from './told';

export interface Rows {
  readonly numbers: ReadonlyMap<string, Float64Array>;
  readonly why: Uint16Array;
  /** Per sentence of the sweep, what is the same in all of its kind. */
  readonly general: readonly string[];
  options(path: string): readonly string[] | undefined;
}

type Keeps = (row: number) => boolean;

/** Which rows a view keeps; undefined: all. */
export function keepRows(view: TableView, rows: Rows): Keeps | undefined {
  const tests = [
    ...view.keep.flatMap((range) => keepRange(range, rows)),
    ...keepAnswered(view.rows, rows),
    ...keepReason(view.reason, rows),
  ];
  return tests.length === 0 ? undefined : (row) => tests.every((test) => test(row));
}

function keepRange({ of, low, high, options }: KeptRange, rows: Rows): Keeps[] {
  const column = rows.numbers.get(of);
  if (!column) return [];
  const names = rows.options(of);
  if (names) return options ? [(row) => options.includes(names[column[row]!] ?? '')] : [];
  // What has no answer is within no limits.
  if (Number.isNaN(low) && Number.isNaN(high)) return [];
  const [least, most] = [orElse(low, Number.NEGATIVE_INFINITY), orElse(high, Number.POSITIVE_INFINITY)];
  return [(row) => column[row]! >= least && column[row]! <= most];
}

const orElse = (limit: number, none: number): number => (Number.isNaN(limit) ? none : limit);

function keepAnswered(wanted: TableView['rows'], { why }: Rows): Keeps[] {
  switch (wanted) {
    case 'all':
      return [];
    case 'answered':
      return [(row) => why[row] === 0];
    case 'unanswered':
      return [(row) => why[row] !== 0];
  }
}

function keepReason(reason: string, { why, general }: Rows): Keeps[] {
  if (reason === '') return [];
  const of = general.map((each) => each === reason);
  return [(row) => why[row] !== 0 && of[why[row]! - 1] === true];
}
