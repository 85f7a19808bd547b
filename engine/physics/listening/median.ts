export const medianOf = (values: ArrayLike<number>): number =>
  Float64Array.from(values).sort()[Math.floor(values.length / 2)] ?? 0;
