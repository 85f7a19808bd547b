import { withoutNumbers } from '../tables/reasons';
import type { Flown } from './fly';
import type { TriedDesign } from './told';

/** Designs that a picture shows beside the best ones. */
const MOST_OTHERS = 1500;

/** Counts what designs give, and keeps some of a first grid of so many. */
export function startTally(grid: number) {
  const broken = new Map<string, number>();
  const reasons = new Map<string, { count: number; readonly sentence: string }>();
  const others: Pick<TriedDesign, 'at' | 'goals'>[] = [];
  const every = Math.max(1, Math.ceil(grid / MOST_OTHERS));
  let tried = 0;
  let kept = 0;
  let unanswered = 0;
  function out({ reason, breaks }: Flown): boolean {
    for (const path of breaks) broken.set(path, (broken.get(path) ?? 0) + 1);
    if (reason === '') return breaks.length > 0;
    unanswered++;
    const key = withoutNumbers(reason);
    const known = reasons.get(key);
    if (known) known.count++;
    else reasons.set(key, { count: 1, sentence: reason });
    return true;
  }
  return {
    tried: () => tried,
    /** One more design has been tried. */
    count(flown: Flown, onGrid: boolean): void {
      tried++;
      if (out(flown) || !onGrid) return;
      if (kept % every === 0) others.push({ at: flown.at, goals: flown.goals });
      kept++;
    },
    /** What was found of it when it was looked at closer. */
    outLater: (flown: Flown): void => void out(flown),
    found: () => ({
      ...{ tried, unanswered, others },
      reason: [...reasons.values()].sort((a, b) => b.count - a.count)[0]?.sentence ?? '',
      broken: [...broken].map(([path, count]) => ({ path, count })).sort((a, b) => b.count - a.count),
    }),
  };
}
