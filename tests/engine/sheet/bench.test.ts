import { describe, expect, test } from 'vitest';
import { fillBench, layBench } from '../../../engine/sheet/bench';
import type { Compiled } from '../../../engine/sheet/compile';
import { type Live, openLive, setLive } from '../../../engine/sheet/live';
import type { Slot } from '../../../engine/sheet/program';
import { wiringOf } from '../../../engine/sheet/wiring';
import { someOf } from '../../cases';
import { type Random, randomFrom } from './random';
import { library, smallDesign } from './small';

const SAMPLES = 64;
const AXES = ['engine_station', 'tip_weight', 'cord_length', 'tail_stock', 'lap.height', 'motor.pull'] as const;

/** Values along six axes at once, some of them outside what is allowed or with too little thrust. */
function randomSamples(random: Random): Float64Array[] {
  const values: ((random: Random) => number)[] = [
    (r) => -0.19 + 0.06 * r.next(),
    (r) => 0.05 * r.next(),
    (r) => 15 + 20 * r.next(),
    (r) => r.below(2),
    (r) => r.pick([-6, 0, 1, 3, 11]),
    (r) => 12 * r.next(),
  ];
  return values.map((draw) => Float64Array.from({ length: SAMPLES }, () => draw(random)));
}

/** Puts the runs of slots in another order; slots of one run stay one after another. */
function permuted({ slotRuns }: Compiled, stride: number, random: Random): (s: Slot) => number {
  const runs = [...slotRuns.values()];
  for (let k = runs.length - 1; k > 0; k--) {
    const other = random.below(k + 1);
    [runs[k], runs[other]] = [runs[other]!, runs[k]!];
  }
  const columns: number[] = [];
  let next = 0;
  for (const { start, count } of runs) {
    for (let k = 0; k < count; k++) columns[start + k] = (next + k) * stride;
    next += count;
  }
  return (s) => columns[s]!;
}

interface Answers {
  readonly values: Float64Array;
  readonly why: Uint16Array;
}

/** All values and reasons of each sample, computed `stride` samples at a time. */
function compute(
  { compiled, state }: Live,
  samples: readonly Float64Array[],
  stride: number,
  column?: (s: Slot) => number,
): Answers[] {
  const { program } = compiled;
  const bench = layBench(program, stride, column);
  const steps = program.steps.map((_, k) => k);
  const answers: Answers[] = [];
  for (let first = 0; first < SAMPLES; first += stride) {
    fillBench(bench, state.m, state.why, stride);
    for (const [a, axis] of AXES.entries()) {
      const at = bench.column(program.inputs.get(axis)!);
      for (let i = 0; i < stride; i++) bench.m[at + i] = samples[a]![first + i]!;
    }
    bench.run(steps, stride);
    for (let i = 0; i < stride; i++) {
      answers.push({
        values: Float64Array.from({ length: program.size }, (_, s) => bench.m[bench.column(s) + i]!),
        why: Uint16Array.from(steps, (k) => bench.why[k * stride + i]!),
      });
    }
  }
  return answers;
}

describe('the numbers of a sample', () => {
  for (const seed of someOf([1, 2, 3, 4, 5])) {
    test(`are bitwise the same for any order of slots, and for one sample or ${SAMPLES} at a time (seed ${seed})`, () => {
      const random = randomFrom(seed);
      const live = openLive(smallDesign(), library);
      const samples = randomSamples(random);
      const plain = compute(live, samples, 1);
      expect(
        plain.some(({ why }) => why.some((code) => code !== 0)),
        'some have no answer',
      ).toBe(true);
      expect(
        plain.some(({ why }) => why.every((code) => code === 0)),
        'some have all',
      ).toBe(true);
      for (const stride of [1, 64]) {
        expect(compute(live, samples, stride)).toEqual(plain);
        expect(compute(live, samples, stride, permuted(live.compiled, stride, random))).toEqual(plain);
      }
    });
  }

  test('are those of the same design set by hand', () => {
    const live = openLive(smallDesign(), library);
    const samples = randomSamples(randomFrom(6));
    const answers = compute(live, samples, SAMPLES);
    for (const i of [0, 17, 63]) {
      let byHand = openLive(smallDesign(), library);
      const text = (a: number): string => (a === 3 ? ['soft', 'faced'][samples[a]![i]!]! : String(samples[a]![i]!));
      const units = ['m', 'kg', 'm', '', 'm', 'N'];
      // The station is written in millimetres by its unit, so a length in metres says its unit.
      const texts = AXES.map((axis, a) => [axis, `${text(a)} ${units[a]}`.trim()] as const);
      byHand = setLive(byHand, texts, library).live;
      expect([...answers[i]!.values]).toEqual([...byHand.state.m]);
      expect([...answers[i]!.why]).toEqual([...byHand.state.why]);
    }
  });
});

test('a sweep that runs only what lies downstream of its axes gets the same numbers', () => {
  const { compiled, state } = openLive(smallDesign(), library);
  const { program } = compiled;
  const axis = program.inputs.get('engine_station')!;
  const each = wiringOf(program).downstream([axis]);
  expect(each.length).toBeLessThan(program.steps.length);
  const bench = layBench(program, 8);
  fillBench(bench, state.m, state.why, 8);
  for (let i = 0; i < 8; i++) bench.m[bench.column(axis) + i] = -0.19 + 0.005 * i;
  bench.run(each, 8);
  const some = compute(
    openLive(smallDesign(), library),
    AXES.map((name) => new Float64Array(SAMPLES).fill(state.m[program.inputs.get(name)!]!)),
    1,
  );
  const slot = program.slotOf.get('parts.x')!;
  expect(bench.m[bench.column(slot) + 4]).not.toBe(some[0]!.values[slot]);
  for (let i = 0; i < 8; i++) {
    const live = openLive(smallDesign(), library);
    const { live: byHand } = setLive(live, [['engine_station', `${-0.19 + 0.005 * i} m`]], library);
    expect(bench.m[bench.column(slot) + i]).toBe(byHand.state.m[slot]);
  }
});
