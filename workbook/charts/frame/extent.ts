/** Least and greatest of any number of values; undefined where there are none. */
export function extent(values: readonly number[]): readonly [low: number, high: number] | undefined {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const value of values) {
    if (value < low) low = value;
    if (value > high) high = value;
  }
  return low <= high ? [low, high] : undefined;
}
