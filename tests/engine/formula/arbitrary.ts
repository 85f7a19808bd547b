import fc from 'fast-check';
import { type Expression, functionNames } from '../../../engine/formula/index';
import { units } from '../../../engine/units/index';

const nowhere = { from: 0, to: 0 };
const name = fc.constantFrom('a', 'b', 's', 'm', 'reach', 'flight.pull', 'parts.fuel_tank.mass', 'android', 'α2');
const whole = fc.integer({ min: 0, max: 9999 }).map(String);
const decimal = fc.tuple(whole, fc.integer({ min: 0, max: 999 })).map(([a, b]) => `${a}.${b}`);
const power = fc.tuple(decimal, fc.integer({ min: -12, max: 12 })).map(([a, n]) => `${a}e${n}`);
const stroke = fc
  .tuple(fc.integer({ min: 1, max: 63 }), fc.constantFrom(2, 4, 8, 16, 32, 64))
  .map(([a, b]) => `${a}/${b}`);
const mixed = fc.tuple(whole, stroke).map(([a, b]) => `${a} ${b}`);

const unit = fc.constantFrom(...units.map((row) => row.name));
const someUnit = unit.filter((row) => row !== '');

const literal = (digits: string, of: string): Expression => ({
  kind: 'literal',
  ...nowhere,
  digits,
  number: numberOf(digits),
  unit: of,
});

function numberOf(digits: string): number {
  const [wholes, fraction] = digits.includes(' ') ? digits.split(' ') : digits.includes('/') ? ['0', digits] : [digits];
  const [above, below] = (fraction ?? '0/1').split('/');
  return Number(wholes) + Number(above) / Number(below);
}

/** A fraction without a unit inside a formula is a division, so only a mixed number stands without one. */
const anyLiteral = fc.oneof(
  fc.tuple(fc.oneof(whole, decimal, power, mixed), unit).map(([digits, of]) => literal(digits, of)),
  fc.tuple(stroke, someUnit).map(([digits, of]) => literal(digits, of)),
);

/** Expressions of every kind, well-typed or not, as the reader could have made them. */
export const anyExpression: fc.Arbitrary<Expression> = fc.letrec<{ e: Expression }>((tie) => {
  const e = tie('e');
  return {
    e: fc.oneof(
      { depthSize: 'small', withCrossShrink: true },
      anyLiteral,
      name.map((n): Expression => ({ kind: 'name', ...nowhere, name: n })),
      fc.constant<Expression>({ kind: 'pi', ...nowhere }),
      e.map((of): Expression => ({ kind: 'negative', ...nowhere, of })),
      e.map((of): Expression => ({ kind: 'not', ...nowhere, of })),
      fc
        .record({ sign: fc.constantFrom('+', '−', '×', '÷', '^'), left: e, right: e })
        .map((parts): Expression => ({ kind: 'arithmetic', ...nowhere, ...parts })),
      fc
        .record({ sign: fc.constantFrom('=', '≠', '<', '>', '≤', '≥'), left: e, right: e })
        .map((parts): Expression => ({ kind: 'comparison', ...nowhere, ...parts })),
      fc
        .record({ word: fc.constantFrom('and', 'or'), left: e, right: e })
        .map((parts): Expression => ({ kind: 'logic', ...nowhere, ...parts })),
      fc
        .record({ name: fc.constantFrom(...functionNames), arguments: fc.array(e, { maxLength: 3 }) })
        .map((parts): Expression => ({ kind: 'call', ...nowhere, ...parts })),
      fc.record({ condition: e, yes: e, no: e }).map((parts): Expression => ({ kind: 'choice', ...nowhere, ...parts })),
    ),
  };
}).e;
