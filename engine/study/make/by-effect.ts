import { fillBench, layBench } from '../../sheet/bench';
import type { Live } from '../../sheet/live';
import type { Slot } from '../../sheet/program';
import type { NameInfo } from '../../terms/index';
import { cone } from '../run/cone';

/** How far each is moved from its value, both ways: a share of its slide, or of itself where it has none. */
const WAY = { ofSlide: 0.1, ofItself: 0.05 };

/** Variables in the order of what they do to a result when each is moved a little along its slide: what does most first. */
export function byEffect(variables: readonly NameInfo[], result: Slot, live: Live): readonly NameInfo[] {
  const { compiled, state } = live;
  const { program } = compiled;
  const count = 2 * variables.length;
  if (count === 0) return variables;
  const bench = layBench(program, count);
  fillBench(bench, state.m, state.why, count);
  for (const [k, variable] of variables.entries()) {
    const value = state.m[variable.slot]!;
    const way = wayOf(variable, live);
    const at = bench.column(variable.slot) + 2 * k;
    bench.m[at] = value - way;
    bench.m[at + 1] = value + way;
  }
  const slots = variables.map(({ slot }) => slot);
  bench.run(cone(program, slots, [result]), count);
  const now = state.m[result]!;
  const effects = new Map(
    variables.map((variable, k) => {
      const at = bench.column(result) + 2 * k;
      const moved = [bench.m[at]!, bench.m[at + 1]!].map((value) => Math.abs(value - now));
      return [variable, Math.max(0, ...moved.filter(Number.isFinite))] as const;
    }),
  );
  return [...variables].sort((a, b) => effects.get(b)! - effects.get(a)!);
}

function wayOf({ path, slot }: NameInfo, { compiled: { program }, state }: Live): number {
  const end = (name: string): number => state.m[program.slotOf.get(`${path}.${name}`) ?? -1] ?? Number.NaN;
  const way = WAY.ofSlide * (end('high') - end('low'));
  return Number.isFinite(way) && way > 0 ? way : WAY.ofItself * Math.abs(state.m[slot]!);
}
