import { named } from './named';
import { type Needs, ringGroups, shortestRing } from './rings';
import type { StepSpec } from './specs';
import { faultStep } from './steps/fault';

/** Per step the steps that it reads from, each once. */
export function needsOf(specs: readonly StepSpec[], size: number): Needs {
  const writer = new Int32Array(size).fill(-1);
  for (const [k, { step }] of specs.entries()) for (const slot of step.writes) writer[slot] = k;
  return specs.map(({ step }) => {
    const needs = new Set<number>();
    for (const slot of step.reads) if (writer[slot]! >= 0) needs.add(writer[slot]!);
    return [...needs];
  });
}

/** Puts a fault in place of each text that needs itself in the end; what else is on the ring then waits for it. */
export function breakRings(specs: readonly StepSpec[], needs: Needs): StepSpec[] {
  const broken = [...specs];
  for (const group of ringGroups(needs)) {
    const texts = group.filter((k) => specs[k]!.step.kind === 'formula');
    for (const k of texts.length > 0 ? texts : group) {
      const ring = shortestRing(k, needs).map((member) => specs[member]!.step.path);
      const { cell, path, kind, writes } = specs[k]!.step;
      broken[k] = faultStep({ cell, path, kind, writes }, { message: ringSentence(ring) });
    }
  }
  return broken;
}

/** "reserve hangs on itself: it needs flight, which needs lines, which needs reserve. …" */
function ringSentence([first, ...others]: readonly string[]): string {
  if (others.length === 0) {
    return `${named(first!)} hangs on itself: its own text names it. Type a number, or name something else.`;
  }
  const way = [...others, first!].map(named).join(', which needs ');
  return `${named(first!)} hangs on itself: it needs ${way}. Type a number in one of them.`;
}
