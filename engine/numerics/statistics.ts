/** What is told of a set of numbers; those that are no number are left out and counted. */
export interface Summary {
  readonly count: number;
  readonly missing: number;
  readonly mean: number;
  /** Of the sample: over count − 1. */
  readonly deviation: number;
  readonly least: number;
  readonly greatest: number;
  /** In order, without those that are no number. */
  readonly sorted: Float64Array;
}

/** Mean and deviation by two passes. Definition. */
export function summarize(values: Float64Array): Summary {
  const sorted = values.filter((value) => Number.isFinite(value)).sort();
  const count = sorted.length;
  let sum = 0;
  for (const value of sorted) sum += value;
  const mean = sum / count;
  let squares = 0;
  for (const value of sorted) squares += (value - mean) ** 2;
  return {
    count,
    missing: values.length - count,
    mean,
    deviation: count > 1 ? Math.sqrt(squares / (count - 1)) : Number.NaN,
    least: sorted[0] ?? Number.NaN,
    greatest: sorted[count - 1] ?? Number.NaN,
    sorted,
  };
}

/** The value below which the share p of sorted numbers lies, straight between neighbours; NaN of none. Definition 7 of R. J. Hyndman and Y. Fan, Am. Statistician 50 (1996). */
export function percentile(sorted: Float64Array, p: number): number {
  if (!(p >= 0 && p <= 1)) throw new RangeError(`share is ${p}; it must lie from 0 to 1`);
  if (sorted.length === 0) return Number.NaN;
  const at = p * (sorted.length - 1);
  const below = Math.floor(at);
  const low = sorted[below]!;
  const high = sorted[Math.min(below + 1, sorted.length - 1)]!;
  return low + (at - below) * (high - low);
}
