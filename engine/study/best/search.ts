import { spreadOver, startFront } from '../../numerics/index';
import type { Live } from '../../sheet/live';
import { lattice } from '../sweep/lattice';
import { withoutNumbers } from '../tables/reasons';
import { type Flown, flierAlong, TOGETHER } from './fly';
import { FINEST, firstPlaces, keyOf, type Place, placesAround, ROUNDS, valueAt } from './grid';
import { type BestPlan, gridOf } from './plan';
import type { BestProgress, BrokenLimit, TriedDesign } from './told';

/** A design on the front: what is wanted as costs, so that less is better, and where it stands. */
export interface BestPoint {
  readonly costs: readonly number[];
  readonly place: Place;
  readonly design: TriedDesign;
}

/** What was found so far. */
export interface Found {
  readonly tried: number;
  readonly kept: number;
  readonly unanswered: number;
  readonly reason: string;
  readonly broken: readonly BrokenLimit[];
  readonly points: readonly BestPoint[];
  /** Some of the designs of the first grid that keep every limit, the best ones among them. */
  readonly others: readonly TriedDesign[];
}

/** News of a search, and what it would give if it ended here. */
export interface Searching extends Omit<BestProgress, 'best'> {
  readonly found: () => Found;
}

/** Designs around the best ones that are tried at most in one pass, and passes with steps of one length. */
const MOST_AROUND = 2500;
const PASSES = 2;
/** Designs that a picture shows beside the best ones. */
const MOST_OTHERS = 1500;

/** Flies the first grid, then looks closer about the designs that nothing beats. Yields between pieces of its work. */
export function* search(live: Live, plan: BestPlan): Generator<Searching, Found, void> {
  const { axes, cell } = plan;
  const front = startFront<BestPoint>(cell.goals.length);
  const seen = new Set<number>();
  const tally = startTally(gridOf(axes));
  const flier = flierAlong(live, plan);
  const found = (): Found => ({ ...tally.found(), points: front.points() });

  function take(place: Place, flown: Flown, first: boolean): void {
    tally.count(flown, first);
    if (flown.reason !== '' || flown.breaks.length > 0) return;
    const costs = flown.goals.map((value, g) => (cell.goals[g]!.way === 'least' ? value : -value));
    front.add({ costs, place, design: flown });
  }

  function* fly(places: Iterable<Place>, round: number): Generator<Searching, void, void> {
    let some: Place[] = [];
    const flush = (): void => {
      const values = some.map((place) => place.map((at, a) => valueAt(axes[a]!, at)));
      for (const [k, flown] of flier.at(values).entries()) take(some[k]!, flown, round === 0);
      some = [];
    };
    for (const place of places) {
      const key = keyOf(place, axes);
      if (seen.has(key)) continue;
      seen.add(key);
      some.push(place);
      if (some.length < TOGETHER) continue;
      flush();
      yield { tried: tally.tried(), grid: gridOf(axes), round, rounds: ROUNDS, found };
    }
    if (some.length > 0) flush();
  }

  try {
    const { order } = lattice(
      axes.map(({ values }) => values.length),
      axes.map(({ choice }) => choice),
    );
    yield* fly(firstPlaces(axes, order), 0);
    const most = Math.max(1, Math.floor(MOST_AROUND / (3 ** axes.filter(({ choice }) => !choice).length - 1 || 1)));
    for (let round = 1; round <= ROUNDS; round++) {
      const step = FINEST >> round;
      let begun: readonly BestPoint[] = spreadOver(front.points(), most);
      for (let pass = 0; pass < PASSES && begun.length > 0; pass++) {
        const before = new Set(front.points());
        yield* fly(
          begun.flatMap(({ place }) => placesAround(place, axes, step)),
          round,
        );
        begun = spreadOver(
          front.points().filter((point) => !before.has(point)),
          most,
        );
      }
    }
    return found();
  } finally {
    flier.finish();
  }
}

/** Counts what designs give. */
function startTally(grid: number) {
  const broken = new Map<string, number>();
  const reasons = new Map<string, { count: number; readonly sentence: string }>();
  const others: TriedDesign[] = [];
  const every = Math.max(1, Math.ceil(grid / MOST_OTHERS));
  let tried = 0;
  let kept = 0;
  let unanswered = 0;
  return {
    tried: () => tried,
    count(flown: Flown, first: boolean): void {
      tried++;
      if (flown.reason !== '') {
        unanswered++;
        const key = withoutNumbers(flown.reason);
        const known = reasons.get(key);
        if (known) known.count++;
        else reasons.set(key, { count: 1, sentence: flown.reason });
        return;
      }
      for (const path of flown.breaks) broken.set(path, (broken.get(path) ?? 0) + 1);
      if (flown.breaks.length > 0) return;
      if (first && kept % every === 0) others.push(flown);
      kept++;
    },
    found: () => ({
      ...{ tried, kept, unanswered, others },
      reason: [...reasons.values()].sort((a, b) => b.count - a.count)[0]?.sentence ?? '',
      broken: [...broken].map(([path, count]) => ({ path, count })).sort((a, b) => b.count - a.count),
    }),
  };
}
