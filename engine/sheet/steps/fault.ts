import type { Slot, Step } from '../program';
import type { StepSpec, Told } from '../specs';

/** Stands where a text can't be read or a step can't be made: nothing it writes has an answer, and those who read it wait. */
export function faultStep(
  at: { readonly cell: string; readonly path: string; readonly kind: Step['kind']; readonly writes: readonly Slot[] },
  told: Omit<Told, 'path'> & { readonly path?: string },
): StepSpec {
  return {
    step: {
      key: `fault ${at.path}: ${told.message}`,
      kind: at.kind,
      cell: at.cell,
      path: at.path,
      reads: [],
      writes: at.writes,
      reasons: ['fault'],
      bind: () => (_m, why, n) => {
        why.fill(1, 0, n);
      },
    },
    tell: () => ({ path: at.path, ...told }),
  };
}
