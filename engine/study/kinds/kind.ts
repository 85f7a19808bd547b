import type { Cell } from '../../sheet/document';
import type { Live } from '../../sheet/live';
import type { NameInfo } from '../../terms/index';
import type { Fill } from '../run/fill';
import type { Orderless } from '../run/plan';

/** Cells that fly the design more than once. */
export type StudyCell = Extract<
  Cell,
  {
    readonly kind:
      | 'trial_series'
      | 'tolerances'
      | 'what_helps'
      | 'fit'
      | 'variants'
      | 'what_mends'
      | 'best_compromises'
      | 'weighing';
  }
>;

/** One of the things that were asked for: as text, as plain data, and what has no answer. */
export interface Section {
  readonly out: string;
  readonly data: Readonly<Record<string, unknown>>;
  readonly faults: readonly string[];
}

/**
 * What every kind of study can do. P is its plan, S the plan of samples that it flies (the same but for a fit, which flies its
 * log again and again), G gathers what they give, T is what is told of it.
 */
export interface StudyKind<C extends StudyCell, P, S, G, T> {
  readonly kind: C['kind'];
  /** What one is called in a sentence, and how all of a sheet are listed. */
  readonly words: StudyWords;
  /** Which samples, in which order, or the sentence that says why it can't run. Faults of its cell are not looked for again. */
  plan(cell: C, live: Live, revision: number): P | string;
  /** What every axis is in one sample. */
  fill(samples: Orderless & S): Fill;
  gather(plan: P): G;
  tell(plan: P): T;
  /** The whole of it, as the command line prints it. */
  command(cell: C, live: Live, names: ReadonlyMap<string, NameInfo>): Section;
}

export interface StudyWords {
  /** "There is no sweep called "x".", "There are no levers called "x"." */
  readonly none: string;
  /** "The sweeps are a, b." */
  readonly all: string;
}
