/** A place or direction: x aft, y outboard, z up. */
export type Place = readonly [x: number, y: number, z: number];

/** A convex polyhedron by its faces, each the loop of its corners; the way round does not matter. */
export type Polyhedron = readonly (readonly Place[])[];

export const dot = (a: Place, b: Place): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const minus = (a: Place, b: Place): Place => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const cross = (a: Place, b: Place): Place => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

/** A prism along x: the outline in y and z, from −length/2 to length/2. */
export function prism(outline: readonly (readonly [y: number, z: number])[], length: number): Polyhedron {
  const end = (x: number): Place[] => outline.map(([y, z]) => [x, y, z]);
  const [front, rear] = [end(-length / 2), end(length / 2)];
  const sides = outline.map((_, k): Place[] => {
    const next = (k + 1) % outline.length;
    return [front[k]!, front[next]!, rear[next]!, rear[k]!];
  });
  return [front, rear, ...sides];
}

export interface Solid {
  /** m³. */
  readonly volume: number;
  /** Middle of the volume; NaN without any. */
  readonly centroid: Place;
}

/**
 * V = Σ |(a − o) · (b − o) × (c − o)|/6 over the triangles of all faces, o a corner of the body; the centroid by the tetrahedra's own.
 * Convex bodies only. Derivation: division into tetrahedra.
 */
export function solidOf(faces: Polyhedron): Solid {
  const o = faces[0]?.[0];
  let volume = 0;
  let [x, y, z] = [0, 0, 0];
  if (o) {
    for (const face of faces) {
      for (let k = 2; k < face.length; k++) {
        const [a, b, c] = [minus(face[0]!, o), minus(face[k - 1]!, o), minus(face[k]!, o)];
        const part = Math.abs(dot(a, cross(b, c))) / 6;
        volume += part;
        x += (part * (a[0] + b[0] + c[0])) / 4;
        y += (part * (a[1] + b[1] + c[1])) / 4;
        z += (part * (a[2] + b[2] + c[2])) / 4;
      }
    }
  }
  if (!o || volume === 0) return { volume: 0, centroid: [Number.NaN, Number.NaN, Number.NaN] };
  return { volume, centroid: [o[0] + x / volume, o[1] + y / volume, o[2] + z / volume] };
}

/**
 * What of a convex body lies on the far side of a plane: n · p ≥ d. Every face is cut at the plane, and the cut closed by one more face.
 * Source: I. E. Sutherland and G. W. Hodgman, Reentrant polygon clipping, Comm. ACM 17 (1974), face by face.
 */
export function beyond(faces: Polyhedron, normal: Place, distance: number): Polyhedron {
  const kept: Place[][] = [];
  const cut: Place[] = [];
  let severed = false;
  for (const face of faces) {
    const loop: Place[] = [];
    for (let k = 0; k < face.length; k++) {
      const [from, to] = [face[k]!, face[(k + 1) % face.length]!];
      const [a, b] = [dot(normal, from) - distance, dot(normal, to) - distance];
      if (a >= 0) loop.push(from);
      else severed = true;
      if ((a < 0 && b > 0) || (a > 0 && b < 0)) {
        const share = a / (a - b);
        const place: Place = [
          from[0] + share * (to[0] - from[0]),
          from[1] + share * (to[1] - from[1]),
          from[2] + share * (to[2] - from[2]),
        ];
        loop.push(place);
        cut.push(place);
      } else if (a === 0) cut.push(from);
    }
    if (loop.length > 2) kept.push(loop);
  }
  // A plane that only touches a face leaves that face to close the body.
  if (severed && kept.length > 0 && cut.length > 2) kept.push(around(cut, normal));
  return kept;
}

/** Corners of the cut, in the order in which they lie around its middle. */
function around(places: readonly Place[], normal: Place): Place[] {
  const n = places.length;
  const middle: Place = [
    places.reduce((sum, p) => sum + p[0], 0) / n,
    places.reduce((sum, p) => sum + p[1], 0) / n,
    places.reduce((sum, p) => sum + p[2], 0) / n,
  ];
  // Two directions in the plane, the first off the axis that the normal lies furthest from.
  const least = normal.map(Math.abs).indexOf(Math.min(...normal.map(Math.abs)));
  const axis: Place = [least === 0 ? 1 : 0, least === 1 ? 1 : 0, least === 2 ? 1 : 0];
  const u = cross(normal, axis);
  const v = cross(normal, u);
  const size = Math.sqrt(dot(v, v) / dot(u, u));
  const angle = (p: Place): number => {
    const from = minus(p, middle);
    return Math.atan2(dot(from, v), size * dot(from, u));
  };
  return [...places].sort((p, q) => angle(p) - angle(q));
}

/** Area of a face times its direction, m²; corners that stand twice add nothing. Sum over triangles. */
function areaOf(face: readonly Place[]): Place {
  let sum: Place = [0, 0, 0];
  for (let k = 2; k < face.length; k++) {
    const [x, y, z] = cross(minus(face[k - 1]!, face[0]!), minus(face[k]!, face[0]!));
    sum = [sum[0] + x / 2, sum[1] + y / 2, sum[2] + z / 2];
  }
  return sum;
}

/** True where a place lies in or on a convex body: on the inner side of every face, seen from a place within. */
export function isInside(body: Polyhedron, within: Place, place: Place): boolean {
  return body.every((face) => {
    const area = areaOf(face);
    const [inner, side] = [dot(area, minus(within, face[0]!)), dot(area, minus(place, face[0]!))];
    return side * Math.sign(inner) >= -1e-15;
  });
}

/** Least and greatest of n · p over a body. */
export function extent(faces: Polyhedron, normal: Place): readonly [number, number] {
  let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const face of faces) {
    for (const place of face) {
      const along = dot(normal, place);
      least = Math.min(least, along);
      most = Math.max(most, along);
    }
  }
  return [least, most];
}
