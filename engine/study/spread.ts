import type { Spread } from '../numerics/index';
import type { Live } from '../sheet/live';
import type { Slot } from '../sheet/program';
import type { SpreadFactor, SpreadOfResult } from '../terms/index';
import { cone } from './cone';
import { drawDesigns } from './mixed';
import type { SweepPlan } from './plan';
import { CHUNK, startRunner } from './run';
import { startSpreadGathering } from './spread-progress';

/** A number that may differ from what is typed. */
export interface SpreadInput {
  readonly path: string;
  readonly slot: Slot;
  readonly spread: Spread;
  /** Added to be shown: the slot holds only how far the number is off. */
  readonly about?: number;
  /** Numbers of one factor go together when shares are told; missing: a factor of its own. */
  readonly factor?: SpreadFactor;
  /** Not told design by design: one of very many. */
  readonly unshown?: true;
}

export interface SpreadAsked {
  readonly revision: number;
  /** What it is called. */
  readonly spread: string;
  readonly inputs: readonly SpreadInput[];
  readonly wanted: readonly string[];
  readonly samples: number;
  readonly seed: number;
}

/**
 * Designs whose inputs differ by their spreads: a Latin hypercube of n designs and, for the shares of the variance, as many
 * again of another one and of the first with one factor of the second at a time. The same seed gives the same designs.
 */
export function planSpread({ compiled, state }: Live, asked: SpreadAsked): SweepPlan {
  const { program } = compiled;
  const { inputs, samples, seed, revision, spread } = asked;
  const told: SpreadFactor[] = [];
  const factors = inputs.map(({ path, factor = { path, what: 'value' } }) => {
    const known = told.indexOf(factor);
    return known < 0 ? told.push(factor) - 1 : known;
  });
  const { a, b, order, coarse } = drawDesigns(samples, inputs.length, told.length + 2, seed);
  const wanted = asked.wanted.map((path) => ({ path, slot: program.slotOf.get(path)! }));
  return {
    shape: program.shape,
    revision,
    sweep: spread,
    base: state.m.slice(0, program.size),
    why: state.why.slice(0, program.steps.length),
    axes: inputs.map(({ path, slot, spread, about, unshown }, k) => ({
      ...{ path, slot, spread, choice: false, values: a[k]!, others: b[k]!, shown: !unshown },
      ...(about === undefined ? {} : { about }),
    })),
    wanted,
    mixed: { count: samples, seed, factors, told },
    each: cone(
      program,
      inputs.map(({ slot }) => slot),
      wanted.map(({ slot }) => slot),
    ),
    order,
    coarse,
  };
}

/** The same from beginning to end, where nobody waits for news. */
export function runSpread(
  live: Live,
  inputs: readonly SpreadInput[],
  wanted: readonly string[],
  samples: number,
  seed: number,
): readonly SpreadOfResult[] {
  return runSpreadPlan(live, planSpread(live, { revision: 0, spread: '', inputs, wanted, samples, seed })).results;
}

export function runSpreadPlan({ compiled }: Live, plan: SweepPlan) {
  const runner = startRunner(compiled, plan);
  const gathering = startSpreadGathering(plan, plan.mixed!);
  for (let from = 0; from < plan.order.length; from += CHUNK) {
    gathering.take(from, runner.run(plan.order.subarray(from, from + CHUNK)));
  }
  runner.finish();
  return gathering.progress('done').spread!;
}
