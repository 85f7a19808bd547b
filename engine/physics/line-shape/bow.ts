import type { LineShape } from './shape';

/** How a line lies beside the straight line between its ends. */
export interface LineBow {
  /** Behind the straight line (against the way of flight) and below it, at each place of the shape, m. */
  readonly back: Float64Array;
  readonly down: Float64Array;
  /** The greatest of each, by a parabola through the places next to it; negative where the line bows ahead or up. */
  readonly greatestBack: number;
  readonly greatestDown: number;
  /** Length along the bow less the straight distance, m. */
  readonly extra: number;
}

/** Measures the bow; `rate` as in `lineLoad` says which way is back. Distances are square to the straight line. Geometry. */
export function bowOf(shape: LineShape, rate: number): LineBow {
  const { handle, guide, along } = shape;
  const chord = guide.map((end, k) => end - handle[k]!) as [number, number, number];
  const straight = Math.hypot(...chord);
  const level = Math.hypot(chord[0], chord[1]);
  const way = rate < 0 ? -1 : 1;
  const [bx, by] = [(way * chord[1]) / level, (-way * chord[0]) / level];
  const [ux, uy, uz] = [
    (-chord[0] * chord[2]) / (level * straight),
    (-chord[1] * chord[2]) / (level * straight),
    level / straight,
  ];
  const n = along.length;
  const [back, down] = [new Float64Array(n), new Float64Array(n)];
  for (let k = 0; k < n; k++) {
    const [dx, dy, dz] = [shape.x[k]! - handle[0], shape.y[k]! - handle[1], shape.z[k]! - handle[2]];
    back[k] = dx * bx + dy * by;
    down[k] = -(dx * ux + dy * uy + dz * uz);
  }
  return {
    ...{ back, down },
    greatestBack: peakOf(back),
    greatestDown: peakOf(down),
    extra: shape.length - straight,
  };
}

/** The value of largest size, by a parabola through it and its neighbours. */
function peakOf(values: Float64Array): number {
  let at = 0;
  for (let k = 1; k < values.length; k++) if (Math.abs(values[k]!) > Math.abs(values[at]!)) at = k;
  if (at === 0 || at === values.length - 1) return values[at]!;
  const [before, value, after] = [values[at - 1]!, values[at]!, values[at + 1]!];
  const bend = before - 2 * value + after;
  return bend === 0 ? value : value - (after - before) ** 2 / (8 * bend);
}

/** What the line does at its ends; angles in rad, forces in N of all lines of the bundle. */
export interface LineEndForces {
  /** At the guide: ε from the radius and σ below the slant, its drag and its press on the guide. */
  readonly guideTrail: number;
  readonly guideSag: number;
  readonly drag: number;
  readonly press: number;
  /** At the handle: how far the lines point behind the guide in plan, and below it; their pull there. */
  readonly handleTrail: number;
  readonly handleSag: number;
  readonly handlePull: number;
}

/**
 * Reads what guide and handle feel off a shape: with the pull (X, Y, Z) in the axes of `lineShape` and the guide at φ,
 *
 *   F_line = ±Y,  F_down = −X sin φ + Z cos φ,  ε = atan(F_line/T_r),  σ = atan(F_down/T_r),  T_r = X cos φ + Z sin φ
 *
 * as the closed forms define them; ± by the way of flight. Geometry.
 */
export function endsOf(shape: LineShape, elevation: number, rate: number): LineEndForces {
  const end = shape.along.length - 1;
  const way = rate < 0 ? -1 : 1;
  const [sine, cosine] = [Math.sin(elevation), Math.cos(elevation)];
  const [X, Y, Z] = [shape.pullX[end]!, shape.pullY[end]!, shape.pullZ[end]!];
  const radial = X * cosine + Z * sine;
  const drag = way * Y;
  const press = -X * sine + Z * cosine;
  const [x, y, z] = [shape.pullX[0]!, shape.pullY[0]!, shape.pullZ[0]!];
  return {
    ...{ drag, press },
    guideTrail: Math.atan2(drag, radial),
    guideSag: Math.atan2(press, radial),
    handleTrail: Math.atan2(-way * y, x),
    handleSag: elevation - Math.atan2(z, Math.hypot(x, y)),
    handlePull: Math.hypot(x, y, z),
  };
}
