import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkFormula, compileFormula, type Expression, partsOf, type Scope } from '../../../engine/formula/index';
import { type Dimension, LENGTH, MASS, ONE, TIME } from '../../../engine/units/index';
import { cases } from '../../cases';

/*
 * The law behind a dimension check: who measures in other base units gets the same quantity. With other sizes of metre,
 * kilogram and second every name's number changes by the power that its dimension says, and so must the number of every
 * formula that the check lets through. The sizes are powers of 16, so that doubles lose nothing, not even under a root.
 */
const SIZES = { length: 16, mass: 256, time: 1 / 16 };
const scale = (d: Dimension): number => SIZES.length ** d.length * SIZES.mass ** d.mass * SIZES.time ** d.time;

const dimensions: Readonly<Record<string, Dimension>> = { x: LENGTH, y: LENGTH, w: MASS, t: TIME, p: ONE, q: ONE };
const names = Object.keys(dimensions);
const scope: Scope = (name) => ({ kind: 'quantity', dimension: dimensions[name]! });

const nowhere = { from: 0, to: 0 };
const plain = fc
  .constantFrom('1', '2', '0.5')
  .map((digits): Expression => ({ kind: 'literal', ...nowhere, digits, number: Number(digits), unit: '' }));
const nameOf = fc.constantFrom(...names).map((name): Expression => ({ kind: 'name', ...nowhere, name }));

const expressions = fc.letrec<{ e: Expression }>((tie) => {
  const e = tie('e');
  return {
    e: fc.oneof(
      { depthSize: 'small', withCrossShrink: true },
      nameOf,
      fc
        .record({ sign: fc.constantFrom('+', '−', '×', '÷'), left: e, right: e })
        .map((parts): Expression => ({ kind: 'arithmetic', ...nowhere, ...parts })),
      // A sum or comparison of a thing with itself times a plain number, since two chosen freely seldom fit.
      fc.record({ sign: fc.constantFrom('+', '−'), left: e, factor: plain }).map(
        ({ sign, left, factor }): Expression => ({
          kind: 'arithmetic',
          ...nowhere,
          sign,
          left,
          right: times(left, factor),
        }),
      ),
      fc
        .record({ left: e, exponent: fc.oneof(plain, nameOf) })
        .map(
          ({ left, exponent }): Expression => ({ kind: 'arithmetic', ...nowhere, sign: '^', left, right: exponent }),
        ),
      fc
        .record({ name: fc.constantFrom('sqrt', 'abs', 'sgn', 'sin', 'exp', 'round'), of: e })
        .map(({ name, of }): Expression => ({ kind: 'call', ...nowhere, name, arguments: [of] })),
      fc
        .record({ name: fc.constantFrom('min', 'max', 'atan2'), left: e, right: e })
        .map(({ name, left, right }): Expression => ({ kind: 'call', ...nowhere, name, arguments: [left, right] })),
      fc.record({ sign: fc.constantFrom('<', '≥', '='), left: e, right: e, yes: e, factor: plain }).map(
        ({ sign, left, right, yes, factor }): Expression => ({
          kind: 'choice',
          ...nowhere,
          condition: { kind: 'comparison', ...nowhere, sign, left, right },
          yes,
          no: times(yes, factor),
        }),
      ),
    ),
  };
}).e;

function times(left: Expression, right: Expression): Expression {
  return { kind: 'arithmetic', ...nowhere, sign: '×', left, right };
}

const size = (e: Expression): number => partsOf(e).reduce((sum, part) => sum + size(part), 1);

const SEED = 80_000;
const CASES = cases(20_000);

describe(`the dimension check keeps its law, seed ${SEED}`, () => {
  test('in other base units every formula that passes gives the same quantity', () => {
    let passed = 0;
    let refused = 0;
    const values = fc.array(
      fc.integer({ min: -40, max: 40 }).map((n) => n / 8),
      {
        minLength: names.length,
        maxLength: names.length,
      },
    );
    fc.assert(
      fc.property(expressions, values, (e, xs) => {
        const checked = checkFormula(e, scope);
        if (!checked.ok) {
          refused++;
          return;
        }
        if (size(e) > 3) passed++;
        if (checked.type.kind !== 'quantity') return;
        const run = compileFormula(checked.expression, (name) => names.indexOf(name));
        const here = run(Float64Array.from(xs), 0);
        const there = run(
          Float64Array.from(xs, (x, k) => x * scale(dimensions[names[k]!]!)),
          0,
        );
        const expected = here * scale(checked.type.dimension);
        // Math.pow may round differently in its last digit; a value beyond all doubles shows nothing.
        if (!Number.isFinite(expected) || !Number.isFinite(there)) return;
        expect(Math.abs(there - expected)).toBeLessThanOrEqual(1e-9 * Math.abs(expected));
      }),
      { seed: SEED, numRuns: CASES },
    );
    // Both outcomes must be frequent, or the law was not asked.
    expect(passed).toBeGreaterThan(CASES / 10);
    expect(refused).toBeGreaterThan(CASES / 10);
  });
});
