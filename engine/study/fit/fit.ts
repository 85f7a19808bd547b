import { type Determination, determine, type LeastSquares, leastSquaresSteps } from '../../numerics/index';
import type { FitCell } from '../../sheet/document';
import type { Live } from '../../sheet/live';
import { findStudy } from '../kinds/find';
import { titled } from '../run/titled';
import type { Measured } from './log';
import { FIT, type FitPlan, planFit } from './plan';
import { type Predictions, predict, resultsOf } from './predict';
import type { FitAnswer, FittedFactor, FittedNumber } from './told';
import { fitSentences, type LeftOut, notFitted } from './words';

/** A factor whose standard error is larger than the factor itself isn't known from the log. */
const LOOSEST = 1;
/** Rows that fly only with other factors join in; so often at most. */
const MOST_ROUNDS = 3;

type Answer = Omit<FitAnswer, 'revision'>;

/**
 * Finds the factors of a fit cell for the design as it stands: weighted least squares of what was measured against what the model says of
 * the same flights. Yields between pieces of its work.
 */
export function* fitSteps(live: Live, name: string): Generator<void, Answer, void> {
  const cell = findStudy<FitCell>(live, FIT, name);
  if (typeof cell === 'string') return faultyFit(name, cell);
  const plan = planFit(cell, live);
  if (typeof plan === 'string') return faultyFit(name, plan);
  const { factors, log } = plan;
  const rows = 1 + Math.max(...log.measured.map(({ row }) => row));
  const start = Float64Array.from(factors, (factor) => factor.start);
  const before = tellerOf(plan, yield* predict(live, plan, [start], rows), rows);
  let counted = log.measured.filter((each) => before.knows(each));
  if (counted.length === 0) return faultyFit(name, titled(notFitted(plan, before.reason(log.measured[0]!)), live));

  for (let round = 1; ; round++) {
    const found = yield* solve(live, plan, start, counted, rows);
    const after = tellerOf(plan, yield* predict(live, plan, [found.parameters], rows), rows);
    const more = log.measured.filter((each) => before.knows(each) || after.knows(each));
    if (more.length > counted.length && round < MOST_ROUNDS && found.status !== 'no answer') {
      start.set(found.parameters);
      counted = more.filter((each) => after.knows(each));
      continue;
    }
    const out = log.measured
      .filter((each) => !counted.includes(each))
      .map((each): LeftOut => ({ ...each, reason: after.reason(each) || before.reason(each) }));
    return answerOf(live, plan, found, counted, before, after, [
      ...out,
      ...log.strange.map((each) => ({ ...each, other: true })),
    ]);
  }
}

/** The same to its end without a rest. */
export function fitNow(live: Live, name: string): Answer {
  const steps = fitSteps(live, name);
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}

/** Drives the least squares with predictions of the rows that count. */
function* solve(
  live: Live,
  plan: FitPlan,
  start: Float64Array,
  counted: readonly Measured[],
  rows: number,
): Generator<void, LeastSquares, void> {
  const columnOf = (key: 'low' | 'high' | 'scale') => Float64Array.from(plan.factors, (factor) => factor[key]);
  const steps = leastSquaresSteps({
    start,
    low: columnOf('low'),
    high: columnOf('high'),
    scale: columnOf('scale'),
    loosest: LOOSEST,
  });
  let step = steps.next();
  while (!step.done) {
    const points = step.value;
    const teller = tellerOf(plan, yield* predict(live, plan, points, rows), rows);
    step = steps.next(
      points.map((_, p) => Float64Array.from(counted, (each) => (teller.value(each, p) - each.value) / each.error)),
    );
  }
  return step.value;
}

/** Finds one measured number among predictions. */
interface Teller {
  value(of: Measured, point?: number): number;
  knows(of: Measured): boolean;
  reason(of: Measured): string;
}

function tellerOf(plan: FitPlan, { values, reason }: Predictions, rows: number): Teller {
  const columns = new Map(resultsOf(plan).map((path, w) => [path, values[w]!]));
  const value = ({ row, path }: Measured, point = 0): number => columns.get(path)![point * rows + row]!;
  return {
    value,
    knows: (each) => !Number.isNaN(value(each)),
    reason: (each) => (Number.isNaN(value(each)) ? reason(each.row) : ''),
  };
}

/** What is told of the factors that were found. */
export function answerOf(
  live: Live,
  plan: FitPlan,
  found: LeastSquares,
  counted: readonly Measured[],
  before: Teller,
  after: Teller,
  leftOut: readonly LeftOut[],
): Answer {
  const { cell, factors } = plan;
  const free = [...factors.keys()].filter((j) => !found.held[j]);
  const told = determine(
    free.map((j) => found.jacobian[j]!),
    LOOSEST,
  );
  const freedom = counted.length - told.rank;
  const scatter = rootMean(found.sum, freedom);
  // Without a number to spare the laps say nothing of their own scatter.
  const errors = cell.errors === 'scatter' && freedom > 0 ? 'scatter' : 'stated';
  const size = errors === 'scatter' ? scatter : 1;
  const fitted = factors.map((factor, j): FittedFactor => {
    const at = free.indexOf(j);
    const value = found.parameters[j]!;
    const end = found.held[j] ? (value <= factor.low ? 'low' : 'high') : undefined;
    return {
      ...{ path: factor.path, before: factor.start, value, determined: at >= 0 && told.determined[at]! },
      error: at < 0 ? Number.NaN : size * factor.scale * Math.sqrt(told.covariance[at]![at]!),
      ...(end ? { end } : {}),
    };
  });
  const numbers = counted.map(
    (each): FittedNumber => ({
      ...{ row: each.row, path: each.path, measured: each.value, error: each.error },
      ...{ before: before.value(each), fitted: after.value(each) },
    }),
  );
  const sumBefore = numbers.reduce((sum, each) => sum + ((each.before - each.measured) / each.error) ** 2, 0);
  const correlation = correlationOf(told, factors.length, free);
  const ends = found.status === 'settled';
  return {
    ...{ fit: cell.name, state: 'settled', factors: fitted, correlation, numbers, freedom, scatter },
    ...{ scatterBefore: rootMean(sumBefore, freedom), errors, iterations: found.iterations },
    takeable: ends && fitted.every((factor) => factor.determined),
    sentences: fitSentences({ live, plan, found, told, free, fitted, correlation, counted, freedom, leftOut }),
  };
}

const rootMean = (sum: number, freedom: number): number => (freedom > 0 ? Math.sqrt(sum / freedom) : Number.NaN);

function correlationOf({ covariance }: Determination, count: number, free: readonly number[]): number[][] {
  const whole = Array.from({ length: count }, () => new Array<number>(count).fill(Number.NaN));
  for (const [a, j] of free.entries()) {
    for (const [b, k] of free.entries()) {
      whole[j]![k] =
        j === k && covariance[a]![a]! > 0 ? 1 : covariance[a]![b]! / Math.sqrt(covariance[a]![a]! * covariance[b]![b]!);
    }
  }
  return whole;
}

export const faultyFit = (fit: string, message: string): Answer => ({
  ...{ fit, state: 'fault', message, factors: [], correlation: [], numbers: [], freedom: 0 },
  ...{
    scatter: Number.NaN,
    scatterBefore: Number.NaN,
    errors: 'stated',
    iterations: 0,
    takeable: false,
    sentences: [],
  },
});
