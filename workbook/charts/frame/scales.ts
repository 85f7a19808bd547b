import { scaleLinear } from 'd3-scale';
import type { Range } from './y-range';

/** Pixel of a number: the range runs from one pixel to another. */
export const linear = (range: Range, from: number, to: number): ((value: number) => number) =>
  scaleLinear().domain(range).range([from, to]).unknown(Number.NaN);

/** Without the rounding that a change of unit leaves, so that a round end of the range has its tick. */
export const exact = (value: number): number => Number(value.toPrecision(12));
