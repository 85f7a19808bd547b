import {
  cutCorner,
  dot,
  type Place,
  type Polyhedron,
  placed,
  placedBody,
  type TankPlace,
  tankShape,
} from '../../physics/index';
import type { Columns } from '../block';
import type { engineResults } from '../engines/results';
import { typedOr } from '../measures';
import { readCuts } from './cuts';
import type { tankFields } from './fields';

/** Outboard edge over height, and what narrows over width, of a wedge that nobody has measured. Common practice, no source. */
const EDGE_SHARE = 0.2;
const TAPER_SHARE = 0.5;

/** A tank with its pickup, vent and spray bar in the axes of the model, m. */
export interface TankSet {
  /** In its own axes, around its middle. */
  readonly own: { readonly body: Polyhedron; readonly pickup: Place; readonly vent: Place };
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
  const whole = tankShape({
    length,
    width,
    height,
    edgeHeight: wedge ? typedOr(at(f.edge_height), EDGE_SHARE * height) : height,
    taper: wedge ? typedOr(at(f.taper), TAPER_SHARE * width) : 0,
  });
  const half: Place = [length / 2, width / 2, height / 2];
  const own = readCuts(m, f, i).reduce((left, cut) => cutCorner(left, half, cut), whole);
  const pickup: Place = [
    typedOr(at(f.pickup_x), length / 2 - 0.003),
    typedOr(at(f.pickup_y), width / 2 - 0.002),
    at(f.pickup_z),
  ];
  const vent: Place = [
    typedOr(at(f.vent_x), length / 2 - 0.012),
    typedOr(at(f.vent_y), width / 2 - 0.005),
    at(f.vent_z),
  ];
  return {
    own: { body: own, pickup, vent },
    body: placedBody(where, own),
    pickup: placed(where, pickup),
    vent: placed(where, vent),
    outlet: placed(where, [
      typedOr(at(f.outlet_x), -length / 2 - 0.005),
      typedOr(at(f.outlet_y), -width / 2),
      typedOr(at(f.outlet_z), height / 2 + 0.005),
    ]),
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

/** Level (g · p, m²/s²) that the fuel breathes from, with its surface at `level`: a closed tank holds the air's pressure at the inner end of its vent, as long as that is covered. */
export const referenceLevel = (tank: TankSet, gravity: Place, level: number): number =>
  tank.uniflow ? Math.max(level, dot(gravity, tank.vent)) : level;
