import { named } from '../named';
import type { Slot } from '../program';
import type { Reach, StepSpec } from '../specs';

/** A text that is right in itself but names something whose text is at fault, so that its type isn't known: it waits. */
export function waitingStep(cell: string, path: string, on: readonly Reach[], write: Slot): StepSpec {
  return {
    step: {
      key: `waits ${path}`,
      kind: 'formula',
      cell,
      path,
      reads: on.map((reach) => reach.slot),
      writes: [write],
      reasons: ['fault'],
      bind: () => (_m, why, n) => {
        for (let i = 0; i < n; i++) if (why[i] === 0) why[i] = 1;
      },
    },
    tell: () => ({ path, message: `${named(path)} waits for ${named(on[0]!.path)}.` }),
  };
}
