import type { Shape } from './block';

/** The shapes that can be drawn: one with a number missing is left out. */
export const finiteShapes = (shapes: readonly Shape[]): Shape[] =>
  shapes.filter(({ points, radius }) => points.every(Number.isFinite) && Number.isFinite(radius ?? 0));
