import type { BestGoal } from '../../sheet/document';

/** A design that was tried, SI. */
export interface TriedDesign {
  /** Its place along each axis: a number, or an index of options. */
  readonly at: readonly number[];
  /** What it gives of each wish. */
  readonly goals: readonly number[];
  /** And of the other results that are told; NaN where one has no answer. */
  readonly others: readonly number[];
}

/** What kept designs out: limits that take long are looked at only where nothing else does. */
export interface BrokenLimit {
  /** The check, or the result that the design stops for. */
  readonly path: string;
  readonly count: number;
}

export interface BestProgress {
  readonly best: string;
  /** Designs that have been flown, and how many the first grid has. */
  readonly tried: number;
  readonly grid: number;
  /** How often the steps have been halved about the best ones; 0 while the grid is flown. */
  readonly round: number;
  readonly rounds: number;
}

export interface BestAnswer {
  readonly revision: number;
  /** Name of the piece. */
  readonly best: string;
  /** `halted`: somebody ended it, and this is what was found until then; `stopped`: the design was edited meanwhile. */
  readonly state: 'settled' | 'fault' | 'stopped' | 'halted';
  readonly message?: string;
  /** Paths along which designs were tried. */
  readonly axes: readonly string[];
  readonly goals: readonly BestGoal[];
  readonly wanted: readonly string[];
  /** Designs that were flown, and those of them that have no answer. */
  readonly tried: number;
  readonly unanswered: number;
  /** Why most of those have no answer; '' where all have one. */
  readonly reason: string;
  /** Those that keep designs out, the most frequent first. */
  readonly broken: readonly BrokenLimit[];
  /** Of those that nothing beats, so many in all; some of them, the best in the first wish first. */
  readonly front: number;
  readonly shown: readonly TriedDesign[];
  /** Some of the designs of the first grid that those beat. */
  readonly beaten: readonly Pick<TriedDesign, 'at' | 'goals'>[];
  /** The design as set. */
  readonly present: {
    readonly goals: readonly number[];
    /** It has an answer and keeps every limit. */
    readonly keeps: boolean;
    /** So many of the best ones are better in everything that is wanted, or as good and better in something. */
    readonly beatenBy: number;
  };
}
