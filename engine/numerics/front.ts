/** A point by what it costs in each respect; less is better. */
export interface Costed {
  readonly costs: readonly number[];
}

/** Whether a point is as good as another in every respect and better in one. */
export function beats(a: readonly number[], b: readonly number[]): boolean {
  let better = false;
  for (let k = 0; k < a.length; k++) {
    if (a[k]! > b[k]!) return false;
    better ||= a[k]! < b[k]!;
  }
  return better;
}

/**
 * The points that none of the others beats (Pareto front). Only the order of costs counts, so it is the same for any measure
 * that rises with them. Of points whose costs are equal the first one stays.
 */
export interface Front<P extends Costed> {
  /** Whether it stands among them now. Costs are numbers: RangeError for NaN or another count of them. */
  add(point: P): boolean;
  /** Whether such a point would stand among them. */
  takes(costs: readonly number[]): boolean;
  points(): readonly P[];
}

export function startFront<P extends Costed>(respects: number): Front<P> {
  let points: P[] = [];
  const takes = (costs: readonly number[]): boolean =>
    !points.some(({ costs: other }) => other.every((cost, k) => cost <= costs[k]!));
  return {
    takes,
    add(point) {
      const { costs } = point;
      if (costs.length !== respects || costs.some(Number.isNaN)) {
        throw new RangeError(`A point of a front has ${respects} costs, found ${costs.join(', ')}`);
      }
      if (!takes(costs)) return false;
      points = points.filter((other) => !beats(costs, other.costs));
      points.push(point);
      return true;
    },
    points: () => points,
  };
}

/**
 * So many of the points of a front as lie farthest from each other, the best in each respect among them. How far two lie apart goes
 * by how many points lie between them in each respect, so that it too is the same for any measure that rises with the costs. Of
 * points that lie equally far the earlier is taken; they are given in the order in which they came.
 */
export function spreadOver<P extends Costed>(points: readonly P[], most: number): readonly P[] {
  if (points.length <= most) return points;
  const ranks = ranksOf(points);
  const respects = points[0]!.costs.length;
  const taken = new Set<number>();
  const apart = new Float64Array(points.length).fill(Number.POSITIVE_INFINITY);
  const take = (at: number): void => {
    taken.add(at);
    for (const [k, rank] of ranks.entries()) {
      let way = 0;
      for (let c = 0; c < respects; c++) way += Math.abs(rank[c]! - ranks[at]![c]!);
      apart[k] = Math.min(apart[k]!, way);
    }
  };
  for (let c = 0; c < respects && taken.size < most; c++) take(indexOfLeast(ranks, c));
  while (taken.size < most) take(apart.indexOf(Math.max(...apart)));
  return points.filter((_, k) => taken.has(k));
}

function indexOfLeast(ranks: readonly Float64Array[], respect: number): number {
  let best = 0;
  for (let k = 1; k < ranks.length; k++) if (ranks[k]![respect]! < ranks[best]![respect]!) best = k;
  return best;
}

/** Place of each point in each respect among the different costs there, from 0 for the best to 1 for the worst. */
function ranksOf(points: readonly Costed[]): readonly Float64Array[] {
  const respects = points[0]!.costs.length;
  const ranks = points.map(() => new Float64Array(respects));
  for (let c = 0; c < respects; c++) {
    const order = [...points.keys()].sort((a, b) => points[a]!.costs[c]! - points[b]!.costs[c]!);
    let place = 0;
    for (const [n, k] of order.entries()) {
      if (n > 0 && points[k]!.costs[c]! !== points[order[n - 1]!]!.costs[c]!) place++;
      ranks[k]![c] = place;
    }
    if (place > 0) for (const rank of ranks) rank[c] = rank[c]! / place;
  }
  return ranks;
}
