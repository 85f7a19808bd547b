import { curveLinear, curveStep, line } from 'd3-shape';
import type { Point } from '../../drawing/index';

const through = line<Point>(
  ({ x }) => x,
  ({ y }) => y,
)
  .defined(({ x, y }) => Number.isFinite(x + y))
  .digits(2);

/** Path through points in order; a point that is not a number breaks it, one by itself is a dot. */
export const curvePath = (points: readonly Point[]): string => through.curve(curveLinear)(points) ?? '';

/** The same for what goes by whole steps: level, and half way between two points upright. */
export const stepPath = (points: readonly Point[]): string => through.curve(curveStep)(points) ?? '';
