import type { Range } from './y-range';

/** Pixel of a number: the range runs from one pixel to another. */
export const linear = (range: Range, from: number, to: number) => {
  const rate = (to - from) / (range[1] - range[0]);
  return (value: number): number => from + (value - range[0]) * rate;
};

/** Without the rounding that a change of unit leaves, so that a round end of the range has its tick. */
export const exact = (value: number): number => Number(value.toPrecision(12));
