import type { Shape } from '../block';
import { finiteShapes } from '../finite-shapes';

export interface LinesInFlight {
  /** Guide in layout axes, m. */
  readonly x: number;
  readonly y: number;
  /** Between both leadouts at the guide, and between the lines at the handle. */
  readonly spacing: number;
  readonly handleSpacing: number;
  readonly length: number;
  /** How far the lines point aft of the model's own inboard direction, rad. */
  readonly aft: number;
}

/** Both lines from the guide to the handle as they leave the model: straight, with their true trail. */
export function drawLines(l: LinesInFlight): Shape[] {
  const along = l.length * Math.cos(l.aft);
  const back = l.length * Math.sin(l.aft);
  return finiteShapes(
    [-1, 1].map((side): Shape => {
      const x = l.x + (side * l.spacing) / 2;
      const end = l.x + back + (side * l.handleSpacing) / 2;
      return { view: 'plan', part: 'line', points: [x, l.y, end, l.y - along] };
    }),
  );
}
