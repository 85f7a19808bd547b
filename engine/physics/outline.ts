/**
 * A closed outline of straight sides: x0, z0, x1, z1, … its corners in order, m, either way round; the last joins the first.
 * Seen from the side x runs aft and z up; of a wing panel the first runs along the span and the second aft.
 */
export type Outline = readonly number[];

/** Areas in m², moments about the origin of the corners. */
export interface OutlineMeasures {
  area: number;
  /** ∫ x dA and ∫ z dA, m³. */
  momentX: number;
  momentZ: number;
  /** ∫ x² dA, m⁴. */
  secondMomentX: number;
}

/** Corners at least of an area. */
export const LEAST_CORNERS = 3;

/**
 * Area and moments of a closed outline, with c_k = x_k z_k+1 − x_k+1 z_k of the side from corner k to the next:
 *
 *   S = ½ Σ c_k,  ∫ x dA = ⅙ Σ (x_k + x_k+1) c_k,  ∫ z dA = ⅙ Σ (z_k + z_k+1) c_k,
 *   ∫ x² dA = Σ (x_k² + x_k x_k+1 + x_k+1²) c_k/12
 *
 * all with the sign of the way round taken off, so that S is positive (m, m², m³, m⁴). Exact for straight sides that go round
 * once; sides that cross, and corners that enclose nothing, are refused. Derivation: Green's theorem, ∮ over each side.
 */
export function measureOutline(outline: Outline): OutlineMeasures {
  const corners = cornersOf(outline);
  let [area, momentX, momentZ, secondMomentX] = [0, 0, 0, 0];
  // About its first corner: far from the origin the products would take the digits of small differences.
  const { x: x0, z: z0 } = corners[0]!;
  for (const [k, from] of corners.entries()) {
    const to = corners[(k + 1) % corners.length]!;
    const [xa, za, xb, zb] = [from.x - x0, from.z - z0, to.x - x0, to.z - z0];
    const c = xa * zb - xb * za;
    area += c / 2;
    momentX += ((xa + xb) * c) / 6;
    momentZ += ((za + zb) * c) / 6;
    secondMomentX += ((xa * xa + xa * xb + xb * xb) * c) / 12;
  }
  if (area === 0) throw new RangeError('the outline encloses no area; it must go round a surface');
  const way = Math.sign(area);
  return {
    area: way * area,
    momentX: way * (momentX + x0 * area),
    momentZ: way * (momentZ + z0 * area),
    secondMomentX: way * (secondMomentX + 2 * x0 * momentX + x0 * x0 * area),
  };
}

/** x and z of both ends of a side, m. */
type Side = readonly [number, number, number, number];

/** Two sides of an outline that meet elsewhere than at a corner they share. */
export class OutlineCrossing extends RangeError {
  constructor(
    readonly first: Side,
    readonly second: Side,
  ) {
    const side = ([x1, z1, x2, z2]: readonly number[]): string => `from ${x1}, ${z1} to ${x2}, ${z2}`;
    super(
      `the outline crosses itself: its side ${side(first)} meets the one ${side(second)}; its line must go round once`,
    );
  }
}

interface Corner {
  readonly x: number;
  readonly z: number;
}

/** The corners without those that stand where the one before stands; refuses too few, and sides that meet. */
function cornersOf(outline: Outline): Corner[] {
  const corners: Corner[] = [];
  for (let k = 0; k + 1 < outline.length; k += 2) {
    const corner = { x: outline[k]!, z: outline[k + 1]! };
    if (!same(corner, corners.at(-1))) corners.push(corner);
  }
  while (corners.length > 1 && same(corners[0]!, corners.at(-1))) corners.pop();
  if (corners.length < LEAST_CORNERS) {
    throw new RangeError(`the outline has ${corners.length} corners; it must have ${LEAST_CORNERS} or more`);
  }
  const crossing = crossingOf(corners);
  if (crossing) throw new OutlineCrossing(...crossing);
  return corners;
}

const same = (a: Corner, b: Corner | undefined): boolean => b !== undefined && a.x === b.x && a.z === b.z;

/** The first two sides that meet elsewhere than at a corner they share. */
function crossingOf(corners: readonly Corner[]): readonly [Side, Side] | undefined {
  const n = corners.length;
  const side = (k: number): Side => {
    const [from, to] = [corners[k]!, corners[(k + 1) % n]!];
    return [from.x, from.z, to.x, to.z];
  };
  for (let k = 0; k < n; k++) {
    for (let l = k + 2; l < n; l++) {
      if (k === 0 && l === n - 1) continue;
      if (meet(corners[k]!, corners[k + 1]!, corners[l]!, corners[(l + 1) % n]!)) return [side(k), side(l)];
    }
  }
  return undefined;
}

/** On which side of the line from a to b the point c lies: the sign of twice the area of the triangle. */
const turn = (a: Corner, b: Corner, c: Corner): number =>
  Math.sign((b.x - a.x) * (c.z - a.z) - (b.z - a.z) * (c.x - a.x));

/** Of a point on the line through a and b: whether it lies between them. */
const between = (a: Corner, b: Corner, c: Corner): boolean =>
  c.x >= Math.min(a.x, b.x) && c.x <= Math.max(a.x, b.x) && c.z >= Math.min(a.z, b.z) && c.z <= Math.max(a.z, b.z);

function meet(a: Corner, b: Corner, c: Corner, d: Corner): boolean {
  const [abc, abd, cda, cdb] = [turn(a, b, c), turn(a, b, d), turn(c, d, a), turn(c, d, b)];
  if (abc !== abd && cda !== cdb) return true;
  return (
    (abc === 0 && between(a, b, c)) ||
    (abd === 0 && between(a, b, d)) ||
    (cda === 0 && between(c, d, a)) ||
    (cdb === 0 && between(c, d, b))
  );
}

/** A piece of an outline between two stations, straight from one to the other. */
export interface OutlineBay {
  readonly from: number;
  readonly to: number;
  /** How much of the line across it is inside, at either end, m. */
  readonly depthFrom: number;
  readonly depthTo: number;
  /** Where the outline begins along the line across, at either end: the lowest z, m. */
  readonly edgeFrom: number;
  readonly edgeTo: number;
}

/**
 * Cuts an outline that goes round once into bays at the stations (x) of its corners: within each, depth and lower edge run
 * straight. Where a line across meets the outline more than twice its pieces count together. Derivation: each side is straight,
 * and between two neighbouring stations no side begins or ends.
 */
export function outlineBays(outline: Outline): OutlineBay[] {
  const corners = cornersOf(outline);
  const stations = [...new Set(corners.map(({ x }) => x))].sort((a, b) => a - b);
  return stations.slice(1).map((to, k) => {
    const from = stations[k]!;
    const sides = corners.flatMap((a, j) => {
      const b = corners[(j + 1) % corners.length]!;
      if (Math.min(a.x, b.x) > from || Math.max(a.x, b.x) < to) return [];
      const at = (x: number): number =>
        x === a.x ? a.z : x === b.x ? b.z : a.z + ((x - a.x) / (b.x - a.x)) * (b.z - a.z);
      return [{ from: at(from), to: at(to) }];
    });
    // Sides that go round once don't cross: they lie in the same order all along the bay.
    sides.sort((a, b) => a.from + a.to - b.from - b.to);
    const inside = (end: 'from' | 'to'): number =>
      sides.reduce((sum, side, j) => sum + (j % 2 === 0 ? -side[end] : side[end]), 0);
    const lowest = sides[0]!;
    return {
      ...{ from, to, depthFrom: inside('from'), depthTo: inside('to') },
      ...{ edgeFrom: lowest.from, edgeTo: lowest.to },
    };
  });
}

/**
 * ∫ f dx over all bays by Simpson's rule, (h/6) (f_1 + 4 f_m + f_2) of each: exact where f is of the third degree in station,
 * depth and edge together. Derivation: textbook.
 */
export function overBays(
  bays: readonly OutlineBay[],
  f: (station: number, depth: number, edge: number) => number,
): number {
  return bays.reduce((sum, { from, to, depthFrom, depthTo, edgeFrom, edgeTo }) => {
    const middle = f((from + to) / 2, (depthFrom + depthTo) / 2, (edgeFrom + edgeTo) / 2);
    return sum + ((to - from) / 6) * (f(from, depthFrom, edgeFrom) + 4 * middle + f(to, depthTo, edgeTo));
  }, 0);
}

/** Depth (m) at a station, straight within each bay; 0 beyond the ends. */
export function depthAt(bays: readonly OutlineBay[], station: number): number {
  const bay = bays.find(({ from, to }) => station >= from && station <= to);
  if (!bay) return 0;
  const share = (station - bay.from) / (bay.to - bay.from);
  return bay.depthFrom + share * (bay.depthTo - bay.depthFrom);
}
