import { expect, it } from 'vitest';
import { findRoot } from '../../engine/numerics/index';
import { jsonOf } from './aero-rows';
import { usedFlightRows } from './flight-rows';

/*
 * G. E. Alefeld, F. A. Potra, Y. Shi, Algorithm 748: enclosing zeros of continuous functions, ACM Trans. Math. Softw.
 * 21 (1995) 327-344: the test set as a general-purpose numerical library hands it on (the formula of aps02 from
 * memory). Roots to 15 digits; here to 1e-14 of their size.
 */
const FILE = 'numerics_tests.json';
const { cases } = jsonOf(FILE).root_finding;

const functions: Readonly<Record<string, (x: number) => number>> = {
  aps01: (x) => Math.sin(x) - x / 2,
  aps05: (x) => Math.sin(x) - 1 / 2,
  'aps06 n=1': (x) => 2 * x * Math.exp(-1) - 2 * Math.exp(-x) + 1,
  'aps06 n=5': (x) => 2 * x * Math.exp(-5) - 2 * Math.exp(-5 * x) + 1,
  'aps04 n=4 a=0.2': (x) => x ** 4 - 0.2,
  'aps02 first': (x) => {
    let sum = 0;
    for (let i = 1; i <= 20; i++) sum += (2 * i - 5) ** 2 / (x - i * i) ** 3;
    return -2 * sum;
  },
};

/** "pi/2", "1+1e-9", 1.5 … as numbers. */
function read(value: number | string): number {
  if (typeof value === 'number') return value;
  const [first, sign, second] = value.split(/(?<=\d)([+-])(?=\d)/) as [string, string?, string?];
  if (second !== undefined) return Number(first) + (sign === '-' ? -1 : 1) * Number(second);
  const [head, over = '1'] = first.split('/') as [string, string?];
  return (head === 'pi' ? Math.PI : Number(head)) / Number(over);
}

it.each(usedFlightRows(FILE))('%s', (id) => {
  const row = cases.find((each: { id: string }) => each.id === id);
  const f = functions[id];
  expect(f, `no check of ${id}`).toBeDefined();
  const found = findRoot(f!, read(row.bracket[0]), read(row.bracket[1]));
  expect(found.status).toBe('settled');
  expect(Math.abs(found.value / read(row.root) - 1)).toBeLessThan(1e-14);
  expect(found.iterations).toBeLessThan(60);
});
