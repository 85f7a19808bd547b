import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Expression, parseFormula, printFormula } from '../../../engine/formula/index';
import { cases } from '../../cases';
import { anyExpression } from './arbitrary';
import { spell } from './spell';

const read = (text: string): Expression => {
  const result = parseFormula(text);
  if (!result.ok) throw new Error(`${text}: ${result.fault.message}`);
  return result.expression;
};

const SEED = 2511;

describe(`printing, seed ${SEED}`, () => {
  const settings = { seed: SEED, numRuns: cases(5000) };
  // Longer texts are refused by the reader.
  const printed = anyExpression.map((e) => ({ e, text: printFormula(e) })).filter(({ text }) => text.length <= 2000);

  test('reading what was printed gives the same expression', () => {
    fc.assert(
      fc.property(printed, ({ e, text }) => {
        expect(spell(read(text))).toBe(spell(e));
      }),
      settings,
    );
  });

  test('print, read, print is stable', () => {
    fc.assert(
      fc.property(printed, ({ text }) => {
        expect(printFormula(read(text))).toBe(text);
      }),
      settings,
    );
  });
});

test.each([
  ['2*reach+3/s', '2 × reach + 3 ÷ s'],
  ['(a)', 'a'],
  ['(a*b)+c', 'a × b + c'],
  ['a*(b*c)', 'a × (b × c)'],
  ['a-(b-c)', 'a − (b − c)'],
  ['a - -b', 'a − (−b)'],
  ['-(a+b)', '−(a + b)'],
  ['(-a)^2', '(−a)^2'],
  ['-a^2', '−a^2'],
  ['a^-2', 'a^(−2)'],
  ['(3 m)^2', '(3 m)^2'],
  ['3 m ^2', '(3 m)^2'],
  ['3 m^2', '3 m²'],
  ['(1 1/2)^2', '(1 1/2)^2'],
  ['a/(3/32 in)', 'a ÷ (3/32 in)'],
  ['3/32', '3/32'],
  ['-3/32', '−3/32'],
  ['12 deg', '12°'],
  ['12 deg/s', '12 °/s'],
  ['5 Nm', '5 N·m'],
  ['a<=b and not(b=c)', 'a ≤ b and not (b = c)'],
  ['(a or b) and c', '(a or b) and c'],
  ['a ? b : (c ? d : e)', 'if a then b else if c then d else e'],
  ['a ? (b ? c : d) : e', 'if a then (if b then c else d) else e'],
  ['1 + (if a then b else c)', '1 + (if a then b else c)'],
  ['if a ? b : c then d else e', 'if (if a then b else c) then d else e'],
  ['4\'1½"', '4 ft 1 1/2 in'],
  ['2lb10oz', '2 lb 10 oz'],
  ['0:26.1', '0:26.1'],
  ['a 35', 'a 35'],
  ['1,25 metres', '1.25 m'],
  ['arcsin(a)+pi', 'arcsin(a) + π'],
])('%s is printed %s', (text, expected) => {
  expect(printFormula(read(text))).toBe(expected);
});
