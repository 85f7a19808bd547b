/** What it costs to mend, the cheapest first. */
export const MEND_COSTS = ['nothing', 'strength', 'lighter', 'lead', 'size'] as const;
export type MendCost = (typeof MEND_COSTS)[number];

/** One thing changed, everything else as the design has it; SI, or an index of options. */
export interface Mend {
  /** What is typed. */
  readonly path: string;
  readonly cost: MendCost;
  readonly from: number;
  readonly to: number;
  /** What to type: rounded as far as the result stays where it is wanted. */
  readonly text: string;
  /** `met` within its travel; `beyond` it; `short`: it helps, and does not reach. */
  readonly state: 'met' | 'beyond' | 'short';
  /** How far it goes beyond its travel, SI; 0 otherwise. */
  readonly beyond: number;
  /** The piece that leaves no room for it, where its travel ends for want of room. */
  readonly room?: string;
  /** The result with it. */
  readonly result: number;
  /** What it does to each of the other results asked for; NaN where one has no answer. */
  readonly effects: readonly number[];
}

export interface MendsAnswer {
  readonly revision: number;
  /** Name of the piece. */
  readonly mends: string;
  /** `stopped`: the design was edited meanwhile. */
  readonly state: 'settled' | 'fault' | 'stopped';
  readonly message?: string;
  /** The result now and where it is wanted, SI. */
  readonly now: number;
  readonly wanted: number;
  /** It is where it is wanted already. */
  readonly met: boolean;
  /** In the order of what they cost. */
  readonly found: readonly Mend[];
}
