import { rungeKutta, type Shot, type Slope, shoot } from '../../numerics/index';
import { nonNegative, positive, within } from '../domain';
import { lineLoad, type TurningBundle } from './load';

/** A place from the pilot's axis, turning with the lines: x level toward the guide, y level to the left of it seen from above, z up; m. */
export type AxisPlace = readonly [x: number, y: number, z: number];

/** What holds the lines at their ends. */
export interface LineEnds {
  /** R_g along the slant and φ above the level: the guide stands at R_g (cos φ, 0, sin φ). */
  readonly guideRadius: number;
  readonly elevation: number;
  /** T of all lines of the bundle at the guide, N. */
  readonly pull: number;
  /** r_h: the arm turns freely about the axis, so that it points along the lines; or the place where the lines are held. */
  readonly handle: number | AxisPlace;
}

/** A bundle of lines in space. Arrays run from the handle to the guide. */
export interface LineShape extends Shot {
  /** Of one line between handle and guide, along its bow, m. */
  readonly length: number;
  /** ∫ T ds over all lines of the bundle, N·m: over n E A it is the stretch of one. */
  readonly pullLength: number;
  readonly handle: AxisPlace;
  readonly guide: AxisPlace;
  /** Distance along the line, m. */
  readonly along: Float64Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly z: Float64Array;
  /** Force with which the outer part pulls on the inner, N. */
  readonly pullX: Float64Array;
  readonly pullY: Float64Array;
  readonly pullZ: Float64Array;
}

/** Steps along the line: twice as many change the bow by less than 1 part in 10⁵ (tested). */
export const SHAPE_STEPS = 24;
const SIZE = 7;

/**
 * Shape of lines that turn steadily, from the handle to the guide:
 *
 *   dr/ds = t̂,  d(T t̂)/ds + f = 0,  r(0) = r_h t̂(0) or given,  r(l) = guide,  T(l) = pull
 *
 * f as in `lineLoad`. Unknown: both angles and the tension with which the lines leave the handle, and their length l along the bow,
 * by shooting. The arm bears no moment about the axis, so it points along the lines; that is also what the closed forms of lines
 * take. Valid for lines without stiffness; stretch doesn't change the bow noticeably.
 * Derivation: balance of a piece of line.
 */
export function lineShape(bundle: TurningBundle, ends: LineEnds, steps = SHAPE_STEPS): LineShape {
  const radius = positive('guide radius', ends.guideRadius);
  const pull = positive('pull', ends.pull);
  const { elevation } = ends;
  const guide: AxisPlace = [radius * Math.cos(elevation), 0, radius * Math.sin(elevation)];
  const held = typeof ends.handle === 'number' ? undefined : ends.handle;
  const reach = typeof ends.handle === 'number' ? within('handle reach', ends.handle, 0, radius) : 0;
  const straight = held ? distance(held, guide) : radius - reach;
  positive('distance from handle to guide', straight);
  const { count, diameter, linearMass } = bundle;
  nonNegative('mass of the lines', count * linearMass);
  nonNegative('line diameter', diameter);

  let length = straight;
  const load = new Float64Array(3);
  const slope: Slope = (_, s, out) => {
    const tension = Math.sqrt(s[3]! * s[3]! + s[4]! * s[4]! + s[5]! * s[5]!);
    const [tx, ty, tz] = [s[3]! / tension, s[4]! / tension, s[5]! / tension];
    lineLoad(bundle, s[0]!, s[1]!, tx, ty, tz, load);
    out[0] = length * tx;
    out[1] = length * ty;
    out[2] = length * tz;
    out[3] = -length * load[0]!;
    out[4] = -length * load[1]!;
    out[5] = -length * load[2]!;
    out[6] = length * tension;
  };
  const begin = (p: Float64Array, s: Float64Array): void => {
    const flat = Math.cos(p[1]!);
    const [ex, ey, ez] = [flat * Math.cos(p[0]!), flat * Math.sin(p[0]!), Math.sin(p[1]!)];
    const tension = pull * p[2]!;
    length = straight * p[3]!;
    s[0] = held ? held[0] : reach * ex;
    s[1] = held ? held[1] : reach * ey;
    s[2] = held ? held[2] : reach * ez;
    s[3] = tension * ex;
    s[4] = tension * ey;
    s[5] = tension * ez;
    s[6] = 0;
  };
  const miss = (s: Float64Array, out: Float64Array): void => {
    for (let k = 0; k < 3; k++) out[k] = (s[k]! - guide[k]!) / radius;
    out[3] = Math.sqrt(s[3]! * s[3]! + s[4]! * s[4]! + s[5]! * s[5]!) / pull - 1;
  };
  // From the straight line with the pull of its outer end.
  const heading = held ? Math.atan2(-held[1], guide[0] - held[0]) : 0;
  const climb = held ? Math.asin((guide[2] - held[2]) / straight) : elevation;
  const p = Float64Array.of(heading, climb, 1, 1);
  const shot = shoot({ size: SIZE, from: 0, to: 1, steps, begin, slope, miss }, p);

  const columns = Array.from({ length: SIZE }, () => new Float64Array(steps + 1));
  const along = new Float64Array(steps + 1);
  const s = new Float64Array(SIZE);
  begin(p, s);
  let k = 0;
  rungeKutta(slope, s, 0, 1, steps, (u, state) => {
    along[k] = u * length;
    for (let i = 0; i < SIZE; i++) columns[i]![k] = state[i]!;
    k++;
  });
  const [x, y, z, pullX, pullY, pullZ] = columns as [
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  return {
    ...shot,
    ...{ length, pullLength: s[6]!, along, x, y, z, pullX, pullY, pullZ, guide },
    handle: [x[0]!, y[0]!, z[0]!],
  };
}

const distance = (a: AxisPlace, b: AxisPlace): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
