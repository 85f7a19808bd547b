import { beyond, fuelSurface, type Place, type Polyhedron } from '../physics/index';
import type { Shape } from './block';
import type { TankSet } from './tank-set';

/** Outline of a convex body in a view: the hull of its corners. Source: A. M. Andrew, Information Processing Letters 9 (1979), monotone chain. */
function outline(faces: Polyhedron, view: Shape['view']): number[] {
  const across = view === 'plan' ? 1 : 2;
  const places = faces.flat().map((p): [number, number] => [p[0], p[across]]);
  places.sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const turn = (o: [number, number], a: [number, number], b: [number, number]): number =>
    (a[0] - o[0]) * (b[1] - o[1]) - (a[1] - o[1]) * (b[0] - o[0]);
  const half = (list: [number, number][]): [number, number][] => {
    const chain: [number, number][] = [];
    for (const p of list) {
      while (chain.length > 1 && turn(chain.at(-2)!, chain.at(-1)!, p) <= 0) chain.pop();
      chain.push(p);
    }
    return chain.slice(0, -1);
  };
  return [...half(places), ...half(places.reverse())].flat();
}

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
