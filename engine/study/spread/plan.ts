import { correlateShares, lowerTriangle } from '../../numerics/index';
import type { SpreadCell } from '../../sheet/document';
import { type Live, numberAt } from '../../sheet/live';
import { cellsOf } from '../../sheet/sheets';
import { isRemade } from '../../sheet/weighed-as';
import { keptWhenWeighed } from '../../sheet/weighed-sizes';
import type { SpreadFactor } from '../../terms/index';
import { type PlanOf, planCore } from '../run/plan';
import { drawDesigns, type Mixed, type SpreadAxis } from './designs';
import type { Correlation, SpreadInput } from './input';
import { correlationsOf, inputsOf, matrixOf } from './inputs';

export interface SpreadAsked {
  readonly revision: number;
  /** What it is called. */
  readonly spread: string;
  readonly inputs: readonly SpreadInput[];
  readonly correlations: readonly Correlation[];
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
  const correlations = correlationsOf(cell, live);
  if (typeof correlations === 'string') return correlations;
  const { name: spread, wanted, samples, seed } = cell;
  return planDesigns(live, { revision, spread, inputs, correlations, wanted, samples, seed });
}

/**
 * Designs whose inputs differ by their spreads: a Latin hypercube of n designs and, for the shares of the variance, as many
 * again of another one and of the first with one factor of the second at a time. The same seed gives the same designs.
 */
export function planDesigns({ compiled, state }: Live, asked: SpreadAsked): SpreadPlan {
  const { inputs, correlations, samples, seed, revision, spread: name, wanted } = asked;
  const told: SpreadFactor[] = [];
  const joined = joinedFactors(inputs, correlations);
  const factors = inputs.map(({ path, factor = { path, what: 'value' } }, k) => {
    const whole = joined.get(k) ?? factor;
    const known = told.indexOf(whole);
    return known < 0 ? told.push(whole) - 1 : known;
  });
  const draws = [...new Set(inputs.map(({ draw }, k) => draw ?? k))];
  const drawn = drawDesigns(samples, draws.length, told.length + 2, seed);
  const { order, coarse } = drawn;
  // Rows come first among the inputs and share no draw, so that their places are those of their columns.
  const [a, b] = [drawn.a, drawn.b].map((columns) => correlated(columns, correlations)) as [Columns, Columns];
  const axes = inputs.map(
    ({ path, slot, spread, about, unshown, draw }, k): SpreadAxis => ({
      ...{ path, slot, spread, choice: false, shown: !unshown },
      ...{ values: a[draws.indexOf(draw ?? k)]!, others: b[draws.indexOf(draw ?? k)]! },
      restsOn: [about ?? 0, ...Object.values(spread).filter((each): each is number => typeof each === 'number')],
      ...(about === undefined ? {} : { about }),
    }),
  );
  const together = correlations.map(({ one, other, r }) => `${one}~${other}:${r}`).join(' ');
  const kinds = inputs.map(({ spread }) => spread.kind).join(' ');
  return {
    ...{
      kind: 'tolerances',
      ...planCore(
        compiled.program,
        { revision, name, values: asWeighed({ compiled, state }), why: state.why },
        axes,
        wanted,
      ),
    },
    ...{
      axes,
      mixed: { count: samples, seed, factors, told },
      key: `${kinds} ${seed} ${factors.join(' ')} ${together}`,
    },
    ...{ order, coarse },
  };
}

/**
 * The numbers of the design, where a part that counts by the scale does so whatever is drawn: what is not quite known of its size is not
 * another part.
 */
function asWeighed(live: Live): Float64Array {
  const { document, program } = live.compiled;
  const values = live.state.m.slice();
  for (const cell of cellsOf(document)) {
    if (cell.kind !== 'parts') continue;
    for (const part of cell.rows) {
      const path = `${cell.name}.${part.name}`;
      if (isRemade(path, part, (of) => numberAt(live, of))) continue;
      for (const name of keptWhenWeighed(part)) {
        const slot = program.constants.get(`${path}.${name}`);
        if (slot !== undefined) values[slot] = Number.NaN;
      }
    }
  }
  return values;
}

type Columns = readonly Float64Array[];

/** The columns of the rows made to go together; the others as drawn. */
function correlated(columns: Columns, correlations: readonly Correlation[]): Columns {
  if (correlations.length === 0) return columns;
  const count = 1 + Math.max(...correlations.flatMap(({ one, other }) => [one, other]));
  const rows = columns.slice(0, count);
  return [...correlateShares(rows, lowerTriangle(matrixOf(count, correlations))!), ...columns.slice(count)];
}

/** What is correlated has one share of the variance: parts of it that go together can't be told apart. */
function joinedFactors(
  inputs: readonly SpreadInput[],
  correlations: readonly Correlation[],
): ReadonlyMap<number, SpreadFactor> {
  const group = inputs.map((_, k) => k);
  for (const { one, other } of correlations) {
    const [from, to] = [group[other]!, group[one]!];
    for (const [k, each] of group.entries()) if (each === from) group[k] = to;
  }
  const factors = new Map<number, SpreadFactor>();
  for (const root of new Set(group)) {
    const members = [...group.keys()].filter((k) => group[k] === root);
    if (members.length < 2) continue;
    const paths = members.map((k) => inputs[k]!.path);
    const factor: SpreadFactor = { path: paths[0]!, what: 'together', paths };
    for (const k of members) factors.set(k, factor);
  }
  return factors;
}
