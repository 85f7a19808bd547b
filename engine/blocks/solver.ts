import type { Quantity, Result } from './block';
import { PLAIN } from './measures';

interface Solver {
  /** What is solved, as in "Of the lap that closes". */
  readonly of: string;
  /** What one step is. */
  readonly steps: string;
  /** What is left open, and in what. */
  readonly residual: Pick<Quantity, 'dimension' | 'unit' | 'tradeUnit' | 'doc'>;
  /** How it may end with an answer; an end without one is the block's reason. */
  readonly ends?: readonly string[];
}

/**
 * Status, steps and what is left open of a block's solver: details that formulas, sweeps and the command line can ask for. A second
 * solver of a block has its own word in front of these names.
 */
export const solverResults = ({ of, steps, residual, ends = ['settled'] }: Solver) => ({
  status: {
    ...PLAIN,
    symbol: 'k_s',
    title: 'Solver ended',
    doc: `${of}. Where it ends without an answer the sentence there says why. In formulas a number: ${ends.map((end, k) => `${k} is ${end}`).join(', ')}.`,
    oneOf: ends,
    detail: true,
  } satisfies Result,
  iterations: { ...PLAIN, symbol: 'N', title: 'Solver steps', doc: steps, detail: true } satisfies Result,
  residual: { ...residual, symbol: 'r', title: 'Left open', detail: true } satisfies Result,
});
