import { beyond, fuelSurface, type Place, type Polyhedron } from '../../physics/index';
import type { Shape } from '../block';
import { outlineOf } from './outline';
import type { TankSet } from './set';

const outline = (faces: Polyhedron, view: Shape['view']): number[] =>
  outlineOf(faces.flat().map(([x, y, z]): [number, number] => [x, view === 'plan' ? y : z])).flat();

/** The tank in both views; with half of its fuel, as it lies in the lap (plan) and at rest (side). */
export function drawTank(
  tank: TankSet,
  half?: { readonly volume: number; readonly flight: Place; readonly rest: Place },
): Shape[] {
  const shapes: Shape[] = (['plan', 'side'] as const).map((view) => ({
    view,
    part: 'tank',
    points: outline(tank.body, view),
    closed: true,
  }));
  if (!half) return shapes;
  for (const [view, gravity] of [
    ['plan', half.flight],
    ['side', half.rest],
  ] as const) {
    const { level } = fuelSurface(tank.body, gravity, half.volume);
    shapes.push({ view, part: 'fuel', points: outline(beyond(tank.body, gravity, level), view), closed: true });
  }
  return shapes;
}
