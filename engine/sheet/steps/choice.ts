import type { Slot } from '../program';
import type { StepSpec } from '../specs';

export interface ChoiceStepSpec {
  readonly cell: string;
  readonly path: string;
  /** Holds the index of the picked option. */
  readonly picked: Slot;
  readonly names: readonly string[];
  /** One row an option: the slots of its numbers, in the order of `writes`. */
  readonly numbers: readonly (readonly Slot[])[];
  readonly writes: readonly Slot[];
}

/** Copies the numbers of the picked option. A fault in an option that isn't picked doesn't matter. */
export function choiceStep({ cell, path, picked, names, numbers, writes }: ChoiceStepSpec): StepSpec {
  return {
    step: {
      key: `choice ${path}: ${names.join(' ')}; ${writes.length}`,
      kind: 'choice',
      cell,
      path,
      reads: [picked, ...numbers.flat()],
      writes,
      reasons: [],
      picks: { by: picked, groups: numbers },
      bind(column) {
        const by = column(picked);
        const from = numbers.map((row) => Int32Array.from(row, column));
        const to = Int32Array.from(writes, column);
        return (m, why, n) => {
          for (let i = 0; i < n; i++) {
            if (why[i] !== 0) continue;
            const row = from[m[by + i]!]!;
            for (let k = 0; k < to.length; k++) m[to[k]! + i] = m[row[k]! + i]!;
          }
        };
      },
    },
    tell: () => ({ path, message: '' }),
  };
}
