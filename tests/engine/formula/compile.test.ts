import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkFormula, compileFormula, parseFormula, type Scope } from '../../../engine/formula/index';
import { cases } from '../../cases';
import { anyExpression } from './arbitrary';

const columns: Readonly<Record<string, number>> = { a: 0, b: 1, c: 2 };

function value(text: string, [a = 2, b = 5, c = -3]: readonly number[] = []): number {
  const read = parseFormula(text);
  if (!read.ok) throw new Error(read.fault.message);
  return compileFormula(read.expression, (name) => columns[name]!)(Float64Array.of(a, b, c), 0);
}

describe('values', () => {
  test.each<[string, number]>([
    ['a + b * c', -13],
    ['a - b - c', 0],
    ['a / b * c', (2 / 5) * -3],
    ['-a^2', -4],
    ['a^b', 32],
    ['b^-1', 1 / 5],
    ['2^3^2', 512],
    ['a³', 8],
    ['1 3/32 in', 1.09375 * 0.0254],
    ['2 × 3/32 in', 2 * 0.09375 * 0.0254],
    ['18.3 m', 18.3],
    ['60 ft', 60 * 0.3048],
    ['-5 °C', 268.15],
    ['9000 rpm', (9000 * 2 * Math.PI) / 60],
    ['20 %', 0.2],
    ['sin(30°)', Math.sin(Math.PI / 6)],
    ['arcsin(1) / pi', 0.5],
    ['atan2(1, -1)', (3 * Math.PI) / 4],
    ['sqrt(b) + exp(1) + ln(2) + lg(1000) + log10(10)', Math.sqrt(5) + Math.E + Math.LN2 + 3 + 1],
    ['abs(c) + sgn(c)', 2],
    ['min(a, b, c) + max(a, b, c)', 2],
    ['floor(c ÷ a) + ceil(c ÷ a)', -3],
    ['round(2.5) + round(-2.5) + round(2.4)', 2],
    ['tanh(0.5) − sinh(0.5) ÷ cosh(0.5)', Math.tanh(0.5) - Math.sinh(0.5) / Math.cosh(0.5)],
    ['a < b ? 1 : 2', 1],
    ['a > b ? 1 : 2', 2],
    ['a = 2 and b ≠ 2 ? 1 : 2', 1],
    ['a = 3 or not b = 2 ? 1 : 2', 1],
    ['a ≤ 2 and a ≥ 2 and not (a < 2 or a > 2) ? 1 : 2', 1],
  ])('%s', (text, expected) => {
    expect(value(text)).toBeCloseTo(expected, 12);
  });

  test('dividing by zero leaves the numbers', () => {
    expect(value('a ÷ (b − 5)')).toBe(Number.POSITIVE_INFINITY);
    expect(value('(a − 2) ÷ (b − 5)')).toBeNaN();
  });
});

describe('no number in any part is no number in the whole', () => {
  test.each([
    'a + b',
    'a < b',
    'a = b',
    'a ≠ b',
    'not a = b',
    'b < 9 or a < 1',
    'b > 9 and a < 1',
    'a^0',
    'a²',
    'sgn(a)',
    'round(a)',
    'min(a, b)',
    'max(b, c, a)',
    'b > 1 ? b : a',
    'b < 1 ? a : b',
    'a > 1 ? b : c',
  ])('%s', (text) => {
    expect(value(text)).not.toBeNaN();
    expect(value(text, [Number.NaN, 5, -3])).toBeNaN();
  });
});

test('an option is its place in the list', () => {
  const options = ['balsa', 'ply', 'foam'];
  const scope: Scope = (name) => (name === 'stock' ? { kind: 'option', options } : undefined);
  const read = parseFormula('stock = ply ? 1 : 0');
  const checked = read.ok ? checkFormula(read.expression, scope) : read;
  if (!checked.ok) throw new Error(checked.fault.message);
  const run = compileFormula(checked.expression, () => 0);
  expect([0, 1, 2].map((i) => run(Float64Array.of(0, 1, 2), i))).toEqual([0, 1, 0]);
});

const SEED = 64;
const names = ['a', 'b', 's', 'm', 'reach', 'flight.pull', 'parts.fuel_tank.mass', 'android', 'α2'];

describe(`samples, seed ${SEED}`, () => {
  test('a sample has the same bits wherever its columns lie and whoever its neighbours are', () => {
    const sample = fc.array(fc.double({ min: -100, max: 100, noNaN: true }), {
      minLength: names.length,
      maxLength: names.length,
    });
    fc.assert(
      fc.property(anyExpression, sample, (e, xs) => {
        const alone = compileFormula(e, (name) => names.indexOf(name))(Float64Array.from(xs), 0);
        const stride = 64;
        const wide = new Float64Array(stride * names.length).fill(Number.NaN);
        names.forEach((_, k) => {
          wide[(names.length - 1 - k) * stride + 37] = xs[k]!;
        });
        const among = compileFormula(e, (name) => (names.length - 1 - names.indexOf(name)) * stride)(wide, 37);
        expect(Object.is(among, alone)).toBe(true);
      }),
      { seed: SEED, numRuns: cases(3000) },
    );
  });
});
