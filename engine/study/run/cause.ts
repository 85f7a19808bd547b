import type { Bench } from '../../sheet/bench';
import type { Compiled } from '../../sheet/compile';
import { SETTLED, type Slot, WAITS } from '../../sheet/program';
import { faultOf } from '../../sheet/sentences';
import { wiringOf } from '../../sheet/wiring';
import type { Fault } from '../../terms/index';

/** Why a slot has no answer for sample i, said of the step where the trouble began; undefined where nothing went wrong. */
export function causeOf(compiled: Compiled, bench: Bench, slot: Slot, i = 0): string | undefined {
  const k = wiringOf(compiled.program).writer[slot]!;
  const why = k < 0 ? SETTLED : bench.why[k * bench.stride + i]!;
  if (why === SETTLED) return undefined;
  const fault = faultOf(compiled, bench, why >= WAITS ? why - WAITS : k, i);
  return fault && sentenceOf(fault);
}

/** A fault away from its place. What is wrong within a text is said of the text alone, so the text's name goes before it. */
export function sentenceOf({ path, from, message }: Fault): string {
  return from === undefined || message.includes(path) ? message : `${path}: ${message}`;
}
