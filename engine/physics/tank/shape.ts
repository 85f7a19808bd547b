import { nonNegative, positive } from '../domain';
import { type Place, type Polyhedron, prism } from './polyhedron';

export interface TankSize {
  /** Along x, y and z of the tank, m. */
  readonly length: number;
  readonly width: number;
  readonly height: number;
  /** Height of the outboard edge: that of the tank for a box, less for a wedge. */
  readonly edgeHeight: number;
  /** Width that narrows toward the edge; 0 for a box. */
  readonly taper: number;
}

/** Where and how a tank stands. */
export interface TankPlace {
  readonly middle: Place;
  /** Front end outward, and outboard side down, rad. */
  readonly yaw: number;
  readonly roll: number;
}

/** A box, or a wedge that narrows to its outboard edge: a prism along x around the tank's own middle. */
export function tankShape(size: TankSize): Polyhedron {
  const half = positive('tank width', size.width) / 2;
  const high = positive('tank height', size.height) / 2;
  const edge = Math.min(nonNegative('height of the edge', size.edgeHeight), size.height) / 2;
  const bend = half - Math.min(nonNegative('width that narrows', size.taper), size.width);
  const outline: [number, number][] =
    size.taper === 0
      ? [
          [-half, -high],
          [half, -high],
          [half, high],
          [-half, high],
        ]
      : [
          [-half, -high],
          [bend, -high],
          [half, -edge],
          [half, edge],
          [bend, high],
          [-half, high],
        ];
  return prism(outline, positive('tank length', size.length));
}

/** A place of the tank in the axes of the model: rolled about its length, yawed about the upright, moved to its station. Geometry. */
export function placed(at: TankPlace, [x, y, z]: Place): Place {
  const [cr, sr] = [Math.cos(at.roll), Math.sin(at.roll)];
  const [cy, sy] = [Math.cos(at.yaw), Math.sin(at.yaw)];
  // Outboard side down: what lies outboard sinks, what lies high moves outboard.
  const rolledY = y * cr + z * sr;
  const rolledZ = z * cr - y * sr;
  // Front end (small x) outward.
  return [at.middle[0] + x * cy + rolledY * sy, at.middle[1] + rolledY * cy - x * sy, at.middle[2] + rolledZ];
}

export const placedBody = (at: TankPlace, faces: Polyhedron): Polyhedron =>
  faces.map((face) => face.map((place) => placed(at, place)));
