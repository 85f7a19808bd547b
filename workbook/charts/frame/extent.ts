import { extent as ofAll } from 'd3-array';

/** Least and greatest of any number of values; undefined where there are none. */
export function extent(values: readonly number[]): readonly [low: number, high: number] | undefined {
  const [low, high] = ofAll(values);
  return low === undefined ? undefined : [low, high];
}
