import { type Program, SETTLED, type Slot } from '../../sheet/program';
import { wiringOf } from '../../sheet/wiring';
import type { PlanOf } from './plan';

/** Everything that the numbers of a study rest on. */
export interface Dependence {
  /** What is computed, from what, on which places. */
  readonly steps: string;
  readonly numbers: Float64Array;
}

/**
 * What a plan's numbers and sentences depend on; undefined where a step outside of the sweep has no answer, since then its
 * sentence may change with anything. Two plans that depend on the same give the same rows, whatever else is edited.
 */
export function dependenceOf(program: Program, plan: PlanOf<string>, units: string): Dependence | undefined {
  const { writer } = wiringOf(program);
  const numbers: number[] = [];
  for (const slot of restsOn(program, plan)) {
    if (writer[slot]! >= 0 && plan.why[writer[slot]!] !== SETTLED) return undefined;
    numbers.push(plan.base[slot]!);
  }
  const steps = [
    units,
    ...plan.wanted.map(({ path }) => path),
    '|',
    ...plan.axes.map(({ path, values, choice }) => `${path} ${values.length} ${choice}`),
    plan.key,
    '|',
    ...Array.from(plan.each, (k) => program.steps[k]!.key),
  ].join('\n');
  return {
    steps,
    numbers: Float64Array.from([...plan.axes.flatMap(({ values, restsOn }) => restsOn ?? [...values]), ...numbers]),
  };
}

/** The slots of the design as it stands that a plan's samples read. */
export function restsOn(program: Program, plan: Pick<PlanOf<string>, 'each' | 'axes' | 'wanted'>): Slot[] {
  const { writer } = wiringOf(program);
  const inside = new Set(plan.each);
  const swept = new Set(plan.axes.map((axis) => axis.slot));
  const read = new Set(plan.wanted.map(({ slot }) => slot));
  for (const k of plan.each) for (const slot of program.steps[k]!.reads) read.add(slot);
  return [...read].filter((slot) => !swept.has(slot) && !inside.has(writer[slot]!));
}

export const sameDependence = (a: Dependence, b: Dependence): boolean =>
  a.steps === b.steps &&
  a.numbers.length === b.numbers.length &&
  a.numbers.every((value, k) => Object.is(value, b.numbers[k]));
