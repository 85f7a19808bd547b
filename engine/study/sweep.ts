import type { SweepProgress } from '../protocol';
import type { SweepPlan } from './plan';
import type { Rows } from './run';

/** Not computed yet. */
export const MISSING = 0xffff;
/** Code of the last sentence that fits beside MISSING. */
const MOST_SENTENCES = MISSING - 1;

/** Gathers the rows of a sweep as they come, from one worker or several, in any order. */
export interface Gathering {
  take(rows: Rows): void;
  /** A copy that later rows don't change. */
  progress(state: SweepProgress['state'], message?: string): SweepProgress;
}

export function startGathering(plan: SweepPlan): Gathering {
  const total = plan.order.length;
  const columns = plan.wanted.map(() => new Float64Array(total).fill(Number.NaN));
  const why = new Uint16Array(total).fill(MISSING);
  const sentences: string[] = [];
  const codes = new Map<string, number>();
  let done = 0;

  function codeOf(reason: string): number {
    if (reason === '') return 0;
    const known = codes.get(reason);
    if (known !== undefined) return known;
    if (sentences.length === MOST_SENTENCES) return MOST_SENTENCES;
    const code = sentences.push(reason);
    codes.set(reason, code);
    return code;
  }

  return {
    take({ samples, columns: found, reasons }) {
      for (const [k, sample] of samples.entries()) {
        for (const [w, column] of columns.entries()) column[sample] = found[w]![k]!;
        why[sample] = codeOf(reasons[k]!);
      }
      done += samples.length;
    },
    progress: (state, message) => ({
      revision: plan.revision,
      sweep: plan.sweep,
      axes: plan.axes.map(({ path, values }) => ({ path, values: values.slice() })),
      wanted: plan.wanted.map(({ path }) => path),
      columns: columns.map((column) => column.slice()),
      why: why.slice(),
      sentences: [...sentences],
      done,
      total,
      state,
      ...(message === undefined ? {} : { message }),
    }),
  };
}

/** A sweep that can't run, with the sentence that says why. */
export const faultyProgress = (revision: number, sweep: string, message: string): SweepProgress => ({
  revision,
  sweep,
  axes: [],
  wanted: [],
  columns: [],
  why: new Uint16Array(0),
  sentences: [],
  done: 0,
  total: 0,
  state: 'fault',
  message,
});
