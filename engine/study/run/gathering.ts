import { NOT_COMPUTED, type SweepProgress } from '../../terms/index';
import type { PlanOf } from './plan';
import type { Rows } from './runner';

/** As many different sentences as there are codes beside NOT_COMPUTED; the last code says that there were more. */
const MOST_SENTENCES = NOT_COMPUTED - 2;
const MORE_SENTENCES = 'Too many different reasons were found to spell out this one. Take fewer points to read it.';

/** All rows of a plan, not to be changed. */
export type Gathered = Pick<SweepProgress, 'axes' | 'wanted' | 'columns' | 'why' | 'sentences' | 'total'>;

/** Gathers the rows of a plan as they come, from one worker or several, in any order. */
export interface Gathering {
  /**
   * The rows of order[from] and those after it. They count when all before them have come, so that what is gathered is the
   * same whoever computed it and whichever came first.
   */
  take(from: number, rows: Rows): void;
  /** A copy that later rows don't change. */
  progress(state: SweepProgress['state'], more?: Pick<SweepProgress, 'message' | 'left'>): SweepProgress;
  /** What there is so far, itself. */
  readonly rows: Gathered;
  /** The same without any rows. */
  bare(state: SweepProgress['state']): SweepProgress;
}

/** What a kind of study tells of the first `done` samples in the order of its plan: copies that later rows don't change. */
export type Tell = (rows: Gathered, done: number, state: SweepProgress['state']) => Partial<SweepProgress>;

/** `always` is told with all news, also where there are no rows. */
export function startGathering(plan: PlanOf<string>, tell: Tell, always: Partial<SweepProgress> = {}): Gathering {
  const total = plan.order.length;
  const columns = plan.wanted.map(() => new Float64Array(total).fill(Number.NaN));
  const why = new Uint16Array(total).fill(NOT_COMPUTED);
  const sentences: string[] = [];
  const codes = new Map<string, number>();
  const early = new Map<number, Rows>();
  let done = 0;

  function codeOf(reason: string): number {
    const known = codes.get(reason);
    if (known !== undefined) return known;
    if (sentences.length >= MOST_SENTENCES) {
      if (sentences.length === MOST_SENTENCES) sentences.push(MORE_SENTENCES);
      return sentences.length;
    }
    const code = sentences.push(reason);
    codes.set(reason, code);
    return code;
  }

  function count({ samples, columns: found, why: codesFound, sentences: said }: Rows): void {
    const meant = said.map(codeOf);
    for (const [w, column] of columns.entries()) {
      const part = found[w]!;
      for (let k = 0; k < samples.length; k++) column[samples[k]!] = part[k]!;
    }
    for (let k = 0; k < samples.length; k++) {
      const code = codesFound[k]!;
      why[samples[k]!] = code === 0 ? 0 : meant[code - 1]!;
    }
    done += samples.length;
  }

  const bare = (state: SweepProgress['state']): SweepProgress => ({
    revision: plan.revision,
    sweep: plan.name,
    axes: [],
    wanted: plan.wanted.map(({ path }) => path),
    columns: [],
    why: new Uint16Array(0),
    sentences: [],
    done,
    total,
    state,
    ...always,
  });

  const rows: Gathered = {
    axes: plan.axes,
    wanted: plan.wanted.map(({ path }) => path),
    columns,
    why,
    sentences,
    total,
  };

  return {
    rows,
    take(from, found) {
      early.set(from, found);
      for (let next = early.get(done); next; next = early.get(done)) {
        early.delete(done);
        count(next);
      }
    },
    progress: (state, more) => ({ ...bare(state), ...tell(rows, done, state), ...more }),
    bare,
  };
}

/** Copies of all rows as they are. */
export const copyRows = ({
  columns,
  why,
  sentences,
}: Gathered): Pick<SweepProgress, 'columns' | 'why' | 'sentences'> => ({
  columns: columns.map((column) => column.slice()),
  why: why.slice(),
  sentences: [...sentences],
});

/** A study that can't run, with the sentence that says why. */
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
