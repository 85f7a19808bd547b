import { findRoot } from '../../numerics/index';
import { nonNegative } from '../domain';
import { beyond, dot, extent, type Place, type Polyhedron, type Solid, solidOf } from './polyhedron';

/** How fuel lies in a tank. */
export interface FuelSurface {
  /** Of the surface along the apparent gravity: g · p = level at every place p of it, m²/s². */
  readonly level: number;
  readonly fuel: Solid;
  /** `nearly`: the search ended before the surface held still. */
  readonly status: 'settled' | 'nearly';
  /** Steps of the search, and volume that it misses (m³). */
  readonly iterations: number;
  readonly residual: number;
}

/**
 * The plane square to the apparent gravity g (m/s²) that leaves the volume (m³) of fuel on its far side. Root of volume over level, which only
 * falls. More than the tank holds is a full tank, whose surface is its nearest place. Derivation: a liquid at rest in its own frame has a surface
 * square to the apparent gravity.
 */
export function fuelSurface(tank: Polyhedron, gravity: Place, volume: number): FuelSurface {
  nonNegative('volume of fuel', volume);
  const [nearest, furthest] = extent(tank, gravity);
  const whole = solidOf(tank);
  if (volume >= whole.volume) return { level: nearest, fuel: whole, status: 'settled', iterations: 0, residual: 0 };
  const left = (level: number): number => solidOf(beyond(tank, gravity, level)).volume - volume;
  const tolerance = 1e-10 * (furthest - nearest);
  const root = findRoot(left, nearest, furthest, { tolerance });
  return {
    level: root.value,
    fuel: solidOf(beyond(tank, gravity, root.value)),
    status: root.status === 'settled' ? 'settled' : 'nearly',
    iterations: root.iterations,
    residual: root.residual,
  };
}

/** Volume (m³) that lies deeper than a place: what is left when the surface has come down to it. */
export function volumeBeyond(tank: Polyhedron, gravity: Place, place: Place): number {
  const [, furthest] = extent(tank, gravity);
  const level = dot(gravity, place);
  return level >= furthest ? 0 : solidOf(beyond(tank, gravity, level)).volume;
}

/** p = ρ (g · p − level): pressure (Pa) that fuel of density ρ (kg/m³) has at a place over that at its surface. Hydrostatics. */
export const headAt = (density: number, gravity: Place, place: Place, level: number): number =>
  density * (dot(gravity, place) - level);
