import { describe, expect, it } from 'vitest';
import { serialise } from '../../../../engine/sheet/file';
import { openLive } from '../../../../engine/sheet/live';
import { answer } from '../../../../engine/study/command/answer';
import { readArguments } from '../../../../engine/study/command/arguments';
import { typedSlot } from '../../../../engine/study/run/axis';
import { planDesigns } from '../../../../engine/study/spread/plan';
import { library, slideRule } from '../slide-rule';
import { runPlan } from '../whole';

const file = serialise(slideRule());
function ask(...words: string[]) {
  const read = readArguments(['slide.json', ...words]);
  if (read.ask !== 'run') throw new Error(read.ask === 'nothing' ? read.message : read.ask);
  return answer(read.request, file, library);
}

describe('a spread on the command line', () => {
  it('tells mean, deviation, percentiles and shares, the same again from the same seed', () => {
    const words = ['--tolerances', 'a=normal 1 mm', '--get', 'double', '--samples', '500', '--seed', '4'];
    const { out, err, code } = ask(...words);
    expect([err, code]).toEqual(['', 0]);
    expect(out).toMatch(
      /^double: mean [\d.]+\u00a0mm, standard deviation [\d.]+\u00a0mm; 5\u00a0% below .*\u00a0mm, half below .*\u00a0mm, 95\u00a0% below .*\u00a0mm\n/,
    );
    expect(out).toMatch(
      / {2}a: [\d.]+\u00a0% ± [\d.]+\u00a0% of the variance alone, [\d.]+\u00a0% ± [\d.]+\u00a0% with the others\n$/,
    );
    expect(ask(...words).out).toBe(out);
    expect(ask(...words.slice(0, -1), '5').out).not.toBe(out);
  });
  it('says what is wrong with it', () => {
    const wrong = (text: string) => ask('--tolerances', text, '--get', 'double').err;
    expect(wrong('root.sid=normal 1 mm')).toMatch(/^Nothing is called root\.sid that a number can be typed into\./);
    expect(wrong('a=odd 1 mm')).toBe(
      'a is to differ by “odd 1 mm”. Write a kind and an amount, such as “normal 2 mm”; the kinds are normal, uniform, triangular.\n',
    );
    expect(wrong('a=normal 1 g')).toBe(
      'a is to differ by “1 g”, which is no amount greater than 0. Write a number with its unit, such as “normal 2 mm”.\n',
    );
    expect(() => ask('--tolerances')).toThrow(
      '--tolerances needs NAME=KIND AMOUNT or the name of tolerances and found nothing. Write it like --tolerances "tip_weight=normal 2 g".',
    );
    expect(() => ask('--samples', '1')).toThrow('--samples needs a whole number from 2 to 1000000 and found “1”.');
    expect(() => ask('--seed')).toThrow('--seed needs a whole number from 0 to 1000000 and found none.');
  });
});

describe('a spread', () => {
  it('through a straight formula keeps the closed form of mean and deviation', () => {
    const live = openLive(slideRule(), library);
    const slot = typedSlot('a', live.compiled.program);
    const at = live.state.m[slot]!;
    const spread = { kind: 'normal', middle: at, deviation: 1e-3 } as const;
    const inputs = [{ path: 'a', slot, spread }];
    const plan = planDesigns(live, {
      revision: 0,
      spread: '',
      inputs,
      correlations: [],
      wanted: ['a'],
      samples: 4000,
      seed: 1,
    });
    const [told] = runPlan(live, plan).spread!.results;
    // Every stratum holds one design, so the mean is far closer than at random.
    expect(Math.abs(told!.mean - at)).toBeLessThan(1e-5);
    expect(told!.deviation / 1e-3).toBeCloseTo(1, 2);
    expect(told!.total[0]).toBeCloseTo(1, 1);
    expect(live.state.m[slot]).toBe(at);
  });
});
