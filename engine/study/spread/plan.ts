import type { SpreadCell } from '../../sheet/document';
import type { Live } from '../../sheet/live';
import type { SpreadFactor } from '../../terms/index';
import { type PlanOf, planCore } from '../run/plan';
import { drawDesigns, type Mixed, type SpreadAxis } from './designs';
import type { SpreadInput } from './input';
import { inputsOf } from './inputs';

export interface SpreadAsked {
  readonly revision: number;
  /** What it is called. */
  readonly spread: string;
  readonly inputs: readonly SpreadInput[];
  readonly wanted: readonly string[];
  readonly samples: number;
  readonly seed: number;
}

export interface SpreadPlan extends PlanOf<'tolerances'> {
  readonly axes: readonly SpreadAxis[];
  readonly mixed: Mixed;
}

/** The designs of a spread cell. */
export function planSpread(cell: SpreadCell, live: Live, revision: number): SpreadPlan | string {
  const inputs = inputsOf(cell, live);
  if (typeof inputs === 'string') return inputs;
  const { name: spread, wanted, samples, seed } = cell;
  return planDesigns(live, { revision, spread, inputs, wanted, samples, seed });
}

/**
 * Designs whose inputs differ by their spreads: a Latin hypercube of n designs and, for the shares of the variance, as many
 * again of another one and of the first with one factor of the second at a time. The same seed gives the same designs.
 */
export function planDesigns({ compiled, state }: Live, asked: SpreadAsked): SpreadPlan {
  const { inputs, samples, seed, revision, spread: name, wanted } = asked;
  const told: SpreadFactor[] = [];
  const factors = inputs.map(({ path, factor = { path, what: 'value' } }) => {
    const known = told.indexOf(factor);
    return known < 0 ? told.push(factor) - 1 : known;
  });
  const { a, b, order, coarse } = drawDesigns(samples, inputs.length, told.length + 2, seed);
  const axes = inputs.map(
    ({ path, slot, spread, about, unshown }, k): SpreadAxis => ({
      ...{ path, slot, spread, choice: false, values: a[k]!, others: b[k]!, shown: !unshown },
      restsOn: [about ?? 0, ...Object.values(spread).filter((each): each is number => typeof each === 'number')],
      ...(about === undefined ? {} : { about }),
    }),
  );
  const kinds = inputs.map(({ spread }) => spread.kind).join(' ');
  return {
    ...{
      kind: 'tolerances',
      ...planCore(compiled.program, { revision, name, values: state.m, why: state.why }, axes, wanted),
    },
    ...{ axes, mixed: { count: samples, seed, factors, told }, key: `${kinds} ${seed} ${factors.join(' ')}` },
    ...{ order, coarse },
  };
}
