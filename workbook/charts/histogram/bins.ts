import { bin, nice, ticks } from 'd3-array';
import { extent } from '../frame/extent';
import { exact } from '../frame/scales';

export interface Bin {
  readonly from: number;
  readonly to: number;
  readonly count: number;
}

const FEWEST_BINS = 5;

/** Bins of one width between round numbers, about as many as the square root of the samples. */
export function binned(values: readonly number[], most: number): Bin[] {
  const answered = values.filter(Number.isFinite);
  const ends = extent(answered);
  if (!ends) return [];
  const [low, high] = ends;
  const wanted = Math.min(most, Math.max(FEWEST_BINS, Math.ceil(Math.sqrt(answered.length))));
  const half = Math.abs(low) * 0.01 || 0.5;
  const [first, last] = high > low ? nice(low, high, wanted) : [low - half, low + half];
  const edges = high > low ? ticks(first, last, wanted).filter((edge) => edge > first && edge < last) : [];
  const bins = bin().domain([first, last]).thresholds(edges)(answered);
  return bins.map(({ x0, x1, length }) => ({ from: exact(x0!), to: exact(x1!), count: length }));
}
