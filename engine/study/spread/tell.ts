import { percentile, quantileOf, sobolIndices, summarize } from '../../numerics/index';
import type { SpreadOfResult, SpreadTold, SweepProgress } from '../../terms/index';
import type { Gathered, Tell } from '../run/gathering';
import { withoutNumbers } from '../tables/reasons';
import type { Mixed } from './designs';
import type { SpreadPlan } from './plan';

/** Designs that are told one by one: more of them look no different on a chart. */
const MOST_SHOWN = 20_000;
/** Shares of fewer designs say nothing. */
const LEAST_COMPARED = 16;

/** Tells what the designs so far make of the results. */
export function tellDesigns(plan: SpreadPlan): Tell {
  const { mixed } = plan;
  let last: { readonly done: number; readonly most: number; readonly told: SpreadTold } | undefined;
  return (rows, done, state) => {
    // News on the way may not keep those waiting who compute: very many designs are told of at the end.
    const most = state === 'running' ? MOST_SHOWN : mixed.count;
    const fresh = last?.done !== done || last.most !== most;
    const told = fresh || !last ? tellSpread(plan, mixed, rows, done, most) : last.told;
    last = { done, most, told };
    return { axes: [], ...shownDesigns(plan, rows, told.designs), spread: told };
  };
}

/** What the first `done` samples in the order of the plan say, but of no more than so many designs. */
function tellSpread(plan: SpreadPlan, mixed: Mixed, rows: Gathered, done: number, most: number): SpreadTold {
  const { count, told } = mixed;
  const designs = Math.min(done, count, most);
  const compared = Math.min(most, Math.floor((done - Math.min(done, count)) / (told.length + 1)));
  const results = plan.wanted.map(({ path }, w): SpreadOfResult => {
    const column = rows.columns[w]!;
    const { mean, deviation, missing, sorted } = summarize(column.subarray(0, designs));
    return {
      path,
      mean,
      deviation,
      low: percentile(sorted, 0.05),
      middle: percentile(sorted, 0.5),
      high: percentile(sorted, 0.95),
      missing,
      ...sharesOf(column, mixed, compared),
    };
  });
  return { designs, samples: count, compared, factors: told, results, causes: causesOf(rows, designs) };
}

type Shares = Pick<SpreadOfResult, 'first' | 'total' | 'firstError' | 'totalError'>;

function sharesOf(column: Float64Array, { count, told }: Mixed, compared: number): Shares {
  if (compared < LEAST_COMPARED) return { first: [], total: [], firstError: [], totalError: [] };
  const set = (number: number): Float64Array => column.subarray(number * count, number * count + compared);
  const found = sobolIndices(
    set(0),
    set(1),
    told.map((_, factor) => set(factor + 2)),
  );
  return {
    first: [...found.first],
    total: [...found.total],
    firstError: [...found.firstError],
    totalError: [...found.totalError],
  };
}

function causesOf({ why, sentences }: Gathered, designs: number): SpreadTold['causes'] {
  const counts = new Map<string, number>();
  for (let k = 0; k < designs; k++) {
    if (why[k] === 0) continue;
    const reason = withoutNumbers(sentences[why[k]! - 1]!);
    counts.set(reason, (counts.get(reason) ?? 0) + 1);
  }
  return [...counts].map(([reason, count]) => ({ reason, count })).sort((a, b) => b.count - a.count);
}

/** Results and what differs, design by design. */
function shownDesigns(
  { axes }: SpreadPlan,
  { wanted, columns, why, sentences }: Gathered,
  designs: number,
): Pick<SweepProgress, 'wanted' | 'columns' | 'why' | 'sentences'> {
  const shown = Math.min(designs, MOST_SHOWN);
  const named = axes.filter((axis) => axis.shown);
  return {
    wanted: [...wanted, ...named.map(({ path }) => path)],
    columns: [
      ...columns.map((column) => column.slice(0, shown)),
      ...named.map(({ spread, values, about = 0 }) =>
        values.slice(0, shown).map((share) => about + quantileOf(spread, share)),
      ),
    ],
    why: why.slice(0, shown),
    sentences: [...sentences],
  };
}
