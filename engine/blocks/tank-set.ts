import { type Place, type Polyhedron, placed, placedBody, type TankPlace, tankShape } from '../physics/index';
import type { Columns } from './block';
import type { engineResults } from './engine-results';
import { typedOr } from './measures';
import type { tankFields } from './tank-fields';

/** A tank with its pickup, vent and spray bar in the axes of the model, m. */
export interface TankSet {
  readonly body: Polyhedron;
  readonly pickup: Place;
  readonly vent: Place;
  readonly outlet: Place;
  readonly spray: Place;
  readonly uniflow: boolean;
  readonly pressurised: boolean;
  readonly forward: boolean;
}

export function readTank(
  m: Float64Array,
  f: Columns<typeof tankFields>,
  engine: Columns<typeof engineResults>,
  i: number,
): TankSet {
  const at = (column: number): number => m[column + i]!;
  const [length, width, height] = [at(f.length), at(f.width), at(f.height)];
  const wedge = at(f.shape) === 1;
  const where: TankPlace = { middle: [at(f.x), at(f.y), at(f.z)], yaw: at(f.yaw), roll: at(f.roll) };
  const inside = (x: number, y: number, z: number): Place => placed(where, [x, y, z]);
  return {
    body: placedBody(
      where,
      tankShape({
        length,
        width,
        height,
        edgeHeight: wedge ? at(f.edge_height) : height,
        taper: wedge ? at(f.taper) : 0,
      }),
    ),
    pickup: inside(
      typedOr(at(f.pickup_x), length / 2 - 0.003),
      typedOr(at(f.pickup_y), width / 2 - 0.002),
      at(f.pickup_z),
    ),
    vent: inside(typedOr(at(f.vent_x), length / 2 - 0.012), typedOr(at(f.vent_y), width / 2 - 0.005), at(f.vent_z)),
    outlet: inside(
      typedOr(at(f.outlet_x), -length / 2 - 0.005),
      typedOr(at(f.outlet_y), -width / 2),
      typedOr(at(f.outlet_z), height / 2 + 0.005),
    ),
    spray: [
      typedOr(at(f.spray_x), at(engine.station)),
      typedOr(at(f.spray_y), at(engine.offset_y)),
      typedOr(at(f.spray_z), at(engine.height) + 0.015),
    ],
    uniflow: at(f.vent) === 1,
    pressurised: at(f.vent) === 2,
    forward: at(f.faces) === 1,
  };
}

/** True where a place lies in or on the tank: on the inner side of every face, seen from its middle. */
export function isInside(body: Polyhedron, middle: Place, p: Place): boolean {
  return body.every(([a, b, c]) => {
    const u = [b![0] - a![0], b![1] - a![1], b![2] - a![2]] as const;
    const v = [c![0] - a![0], c![1] - a![1], c![2] - a![2]] as const;
    const n = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]] as const;
    const side = (q: Place): number => n[0] * (q[0] - a![0]) + n[1] * (q[1] - a![1]) + n[2] * (q[2] - a![2]);
    return side(p) * Math.sign(side(middle)) >= -1e-15;
  });
}
