import type { SweepProgress } from '../../terms/index';
import type { Gathering } from './gathering';
import type { PlanOf } from './plan';
import { CHUNK, type Runner } from './runner';

/** All samples of a plan from beginning to end, where nobody waits for news. */
export function runToEnd({ order }: PlanOf<string>, runner: Runner, gathering: Gathering): SweepProgress {
  for (let from = 0; from < order.length; from += CHUNK) {
    gathering.take(from, runner.run(order.subarray(from, from + CHUNK)));
  }
  runner.finish();
  return gathering.progress('done');
}
