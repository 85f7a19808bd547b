import { compileFormula, type Expression } from '../../formula/index';
import { named } from '../named';
import type { Slot } from '../program';
import type { Reach, StepSpec } from '../specs';

export interface FormulaStepSpec {
  readonly cell: string;
  readonly path: string;
  readonly text: string;
  readonly unit: string;
  readonly expression: Expression;
  /** What the names in it reach, by name. */
  readonly reads: ReadonlyMap<string, Reach>;
  readonly write: Slot;
  /** Index in the formula's own list of options → index in the list that is wanted. */
  readonly indices?: readonly number[];
  /** What stands in where the one name that it consists of has no value; missing: that is a fault. */
  readonly blank?: number;
}

/** Computes a formula. An answer that is no finite number is none. */
export function formulaStep(spec: FormulaStepSpec): StepSpec {
  const { cell, path, text, unit, expression, reads, write, indices, blank } = spec;
  return {
    step: {
      key: `formula ${path} [${unit}] ${indices ? `${indices.join(' ')} ` : ''}${blank === undefined ? '' : `or ${blank} `}= ${text}`,
      kind: 'formula',
      cell,
      path,
      reads: [...reads.values()].map((reach) => reach.slot),
      writes: [write],
      reasons: ['no value'],
      bind(column) {
        const run = compileFormula(expression, (name) => column(reads.get(name)!.slot));
        const at = column(write);
        return (m, why, n) => {
          for (let i = 0; i < n; i++) {
            if (why[i] !== 0) continue;
            const value = run(m, i);
            if (Number.isFinite(value)) m[at + i] = indices ? indices[value]! : value;
            else if (blank !== undefined && Number.isNaN(value)) m[at + i] = blank;
            else why[i] = 1;
          }
        };
      },
    },
    tell(_reason, read) {
      const missing = [...reads.values()].find((reach) => Number.isNaN(read(reach.slot)));
      const message = missing
        ? `${named(path)} has no value, because ${named(missing.path)} has none: nothing is typed there or nothing is known. Give it a value or leave it out of the formula.`
        : `${named(path)} has no value: its arithmetic divides by zero or takes a root or logarithm that does not exist for these numbers. Change the formula or the numbers in it.`;
      return { path, from: 0, to: text.length, message };
    },
  };
}
