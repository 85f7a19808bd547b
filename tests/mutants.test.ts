import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { chooseMutants } from '../.ci/mutants/choose.mjs';
import { markedSource, mutantsOf } from '../.ci/mutants/places.mjs';
import accepted from './published/mutants.accepted.json';

const SOURCE = `
const SHARE = 0.5;
/** A = a b + c. */
export function area(a: number, b: number, c: number): number {
  if (!(a > 7)) throw new RangeError('a is ' + a);
  let sum = out[a + 1]! * 2;
  for (let k = 0; k < 3; k++) sum += within('b', b, 0, 9);
  return -sum * b + c;
}
export const twice = (a: number): number => 2 * a;
`;
const mutants = mutantsOf('a.ts', SOURCE);
const changed = (nth: number): string => {
  const { start, end, text } = mutants[nth]!;
  return SOURCE.slice(0, start) + text + SOURCE.slice(end);
};

describe('mutants', () => {
  it('turn signs, drop terms and take 5 % more, and leave places in arrays, loop heads, limits and messages alone', () => {
    expect(mutants.map(({ id, line }) => `${line} ${id}`)).toEqual([
      '2 a.ts SHARE: 0.5 → 0.525',
      '6 a.ts area: out[a + 1]! * 2 → 5 % more',
      '6 a.ts area: 2 → 2.1',
      "7 a.ts area: sum += within('b', b, 0, 9) → -=",
      "7 a.ts area: sum += within('b', b, 0, 9) → nothing",
      '8 a.ts area: + c → - c',
      '8 a.ts area: + c → nothing',
      '8 a.ts area: -sum * b + c → 5 % more',
      '8 a.ts area: -sum → sum',
      '10 a.ts twice: 2 * a → 5 % more',
      '10 a.ts twice: 2 → 2.1',
    ]);
  });
  it('change the text at their own place only', () => {
    expect(changed(0)).toContain('const SHARE = 0.525;');
    expect(changed(5)).toContain('return ((-sum * b) - (c));');
    expect(changed(6)).toContain('return (-sum * b);');
    expect(changed(7)).toContain('return (1.05 * (-sum * b + c));');
  });
  it('are chosen from every function before a second one of any, and the same again by the same seed', () => {
    const three = chooseMutants(mutants, 7, 3);
    expect(new Set(three.map(({ owner }) => owner)).size).toBe(3);
    expect(chooseMutants(mutants, 7, 3)).toEqual(three);
    expect(chooseMutants(mutants, 1, 99).length).toBe(mutants.length);
  });
  it('find the tests of a function by a mark at its start', () => {
    const marked = markedSource('a.ts', SOURCE);
    expect(marked).toContain('): number {globalThis.reachedFunctions?.add("a.ts area");');
    expect(marked).toContain('=> (globalThis.reachedFunctions?.add("a.ts twice"), 2 * a);');
  });
});

/* What no test notices and why that is right; `npm run mutants` says which of them a test notices after all. */
describe('reasons for mutants that no test notices', () => {
  const folder = new URL('../engine/physics/', import.meta.url);
  const known = new Set(
    readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.ts'))
      .map((name) => name.replaceAll('\\', '/'))
      .flatMap((name) => mutantsOf(`engine/physics/${name}`, readFileSync(new URL(name, folder), 'utf8')))
      .map(({ id }) => id),
  );
  it.each(accepted as readonly { mutant: string; reason: string }[])('$mutant', ({ mutant, reason }) => {
    expect(known).toContain(mutant);
    expect(reason).toMatch(/^[A-Z].{30,}\.$/);
  });
  it('stand once each', () => {
    const names = (accepted as readonly { mutant: string }[]).map(({ mutant }) => mutant);
    expect(new Set(names).size).toBe(names.length);
  });
});
