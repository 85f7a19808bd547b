import { positive } from './domain';
import type { Vector } from './gear-wire';

const minus = (a: Vector, b: Vector): Vector => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const along = (a: Vector, d: Vector, s: number): Vector => [a[0] + s * d[0], a[1] + s * d[1], a[2] + s * d[2]];
const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const norm = (a: Vector): number => Math.hypot(...a);

export interface WireBend {
  /** By how much the wire turns out of its straight run, rad. */
  readonly angle: number;
  /** Along the cut wire from its first end: where the bend begins and ends, m. */
  readonly from: number;
  readonly to: number;
  /**
   * How far the wire is turned about its own length before this bend, against the one before, rad: right-handed about the way
   * to the far end; 0 in one plane and at the first bend, π for a bend the other way.
   */
  readonly turned: number;
}

export interface BentWire {
  /** To be cut, m. */
  readonly length: number;
  readonly bends: readonly WireBend[];
  /** Its centre line with the bends as arcs, m: made only when it is drawn. */
  path(): readonly Vector[];
}

/** Corners of the arcs that are drawn stand closer than this, rad: 0.1 % of the radius off the arc. */
const STEP = Math.PI / 36;
/** Less is no bend, rad. */
const STRAIGHT = 1e-6;

/**
 * Round wire bent along a polyline with bends of one inside radius: what to cut, and where each bend begins and ends.
 *
 *   L = Σ s_k − Σ 2 R tan(θ_k/2) + Σ R θ_k,   R = r + d/2
 *
 * s_k distance between corners (m), θ_k turn at a corner (rad), R radius of the centre line in the bends (m), r inside radius,
 * d wire diameter. The length of the centre line is taken to stay as it is; it grows a little in bends sharper than about r = d.
 * Undefined where a run is too short for the bends at its ends.
 * Source: derivation, arcs that touch both runs; length kept on the centre line: common practice, no source.
 */
export function bendWire(corners: readonly Vector[], diameter: number, insideRadius: number): BentWire | undefined {
  const radius = positive('inside radius of the bends', insideRadius) + positive('wire diameter', diameter) / 2;
  const points = corners.filter((point, k) => k === 0 || norm(minus(point, corners[k - 1]!)) > 0);
  if (points.length < 2) throw new RangeError(`a bent wire has ${points.length} places; it must have at least 2`);
  const runs = points.slice(1).map((to, k) => minus(to, points[k]!));
  const ways = runs.map((run) => along([0, 0, 0], run, 1 / norm(run)));
  const turns = ways.slice(1).map((way, k) => {
    const angle = Math.atan2(norm(cross(ways[k]!, way)), dot(ways[k]!, way));
    return angle > STRAIGHT ? angle : 0;
  });
  const setback = (k: number): number => radius * Math.tan((turns[k] ?? 0) / 2);
  const arcs: (() => Vector[])[] = [];
  const bends: WireBend[] = [];
  let length = 0;
  let plane: Vector | undefined;
  for (let k = 0; k < runs.length; k++) {
    const straight = norm(runs[k]!) - setback(k - 1) - setback(k);
    if (straight < 0) return undefined;
    length += straight;
    const angle = turns[k] ?? 0;
    const corner = points[k + 1]!;
    if (angle === 0) continue;
    const [before, after] = [ways[k]!, ways[k + 1]!];
    const normal = cross(before, after);
    const turned = plane ? Math.atan2(dot(cross(plane, normal), before), dot(plane, normal)) : 0;
    plane = normal;
    bends.push({ angle, from: length, to: length + radius * angle, turned });
    length += radius * angle;
    arcs.push(() => arc(corner, before, after, radius, angle));
  }
  return { length, bends, path: () => [points[0]!, ...arcs.flatMap((each) => each()), points.at(-1)!] };
}

/** Places on the arc that touches both runs at a corner. */
function arc(corner: Vector, before: Vector, after: Vector, radius: number, angle: number): Vector[] {
  const start = along(corner, before, -radius * Math.tan(angle / 2));
  // Across the first run, to the inside of the bend.
  const across = along(after, before, -Math.cos(angle));
  const inward = along([0, 0, 0], across, 1 / norm(across));
  const count = Math.ceil(angle / STEP);
  return Array.from({ length: count + 1 }, (_, n) => {
    const turn = (angle * n) / count;
    return along(along(start, before, radius * Math.sin(turn)), inward, radius * (1 - Math.cos(turn)));
  });
}
