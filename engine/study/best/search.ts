import { spreadOver, startFront } from '../../numerics/index';
import type { Live } from '../../sheet/live';
import { lattice } from '../sweep/lattice';
import { type Flown, flierAlong, isSlow, TOGETHER } from './fly';
import { FINEST, firstPlaces, keyOf, type Place, placesAround, ROUNDS, valueAt } from './grid';
import { type BestPlan, gridOf } from './plan';
import { startTally } from './tally';
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
  readonly unanswered: number;
  readonly reason: string;
  readonly broken: readonly BrokenLimit[];
  readonly points: readonly BestPoint[];
  /** Some of the designs of the first grid that keep the limits that are quickly looked at. */
  readonly others: readonly Pick<TriedDesign, 'at' | 'goals'>[];
}

/** News of a search, and what it would give if it ended here. */
export interface Searching extends Omit<BestProgress, 'best'> {
  readonly found: () => Found;
}

/** Designs around the best ones that are tried at most in one pass, and passes with steps of one length. */
const MOST_AROUND = 2500;
const PASSES = 2;

/** What takes long is flown for few at a time: those that come in on the front keep others from being flown. */
const FEW = 8;

interface Candidate {
  readonly costs: readonly number[];
  readonly place: Place;
  readonly flown: Flown;
}

/** Flies the first grid, then looks closer about the designs that nothing beats. Yields between pieces of its work. */
export function* search(live: Live, plan: BestPlan): Generator<Searching, Found, void> {
  const { axes, cell } = plan;
  const front = startFront<BestPoint>(cell.goals.length);
  const seen = new Set<number>();
  const grid = gridOf(axes);
  const tally = startTally(grid);
  const [slow, quick] = [true, false].map((is) => plan.limits.filter((limit) => isSlow(limit, live, plan) === is));
  const goals = cell.goals.map(({ of }) => of);
  const first = flierAlong(live, plan, { goals, limits: quick!, wanted: [] });
  // What takes long is flown only where it counts.
  const then = flierAlong(live, plan, { goals: [], limits: slow!, wanted: cell.wanted });
  const found = (): Found => ({ ...tally.found(), points: front.points() });

  function flyTogether(places: readonly Place[], onGrid: boolean): void {
    const flown = first.at(places.map((place) => place.map((at, a) => valueAt(axes[a]!, at))));
    for (const each of flown) tally.count(each, onGrid);
    const costs = flown.map((each) => costsOf(cell, each.goals));
    const good = [...flown.keys()].filter(
      (k) => flown[k]!.reason === '' && flown[k]!.breaks.length === 0 && front.takes(costs[k]!),
    );
    for (let from = 0; from < good.length; from += FEW) {
      const some = good.slice(from, from + FEW).filter((k) => front.takes(costs[k]!));
      lookCloser(some.map((k) => ({ costs: costs[k]!, place: places[k]!, flown: flown[k]! })));
    }
  }

  function lookCloser(all: readonly Candidate[]): void {
    if (all.length === 0) return;
    const later = then.at(all.map(({ flown }) => flown.at));
    for (const [n, { costs, place, flown }] of all.entries()) {
      const { others, reason, breaks } = later[n]!;
      tally.outLater(later[n]!);
      if (reason === '' && breaks.length === 0) {
        front.add({ costs, place, design: { at: flown.at, goals: flown.goals, others } });
      }
    }
  }

  function* fly(places: Iterable<Place>, round: number): Generator<Searching, void, void> {
    let some: Place[] = [];
    for (const place of places) {
      const key = keyOf(place, axes);
      if (seen.has(key)) continue;
      seen.add(key);
      some.push(place);
      if (some.length < TOGETHER) continue;
      flyTogether(some, round === 0);
      some = [];
      yield { tried: tally.tried(), grid, round, rounds: ROUNDS, found };
    }
    if (some.length > 0) flyTogether(some, round === 0);
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
    first.finish();
    then.finish();
  }
}

/** What is wanted as costs: less is better. */
export const costsOf = ({ goals }: BestPlan['cell'], values: readonly number[]): readonly number[] =>
  values.map((value, g) => (goals[g]!.way === 'least' ? value : -value));
