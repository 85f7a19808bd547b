import { describe, expect, test } from 'vitest';
import { partsTheory } from '../../../engine/blocks/parts/theory';
import { blocks } from '../../../engine/blocks/registry';

/**
 * Equations in one notation: a product is a space (· with words or units), a quotient a/(b c), a fraction ahead of a product in parentheses,
 * a root √(a), powers a² and a^1.5, subscripts a_0, Greek letters, and two spaces between two equations of a line.
 */
interface Written {
  readonly at: string;
  readonly text: string;
}
const equations = [{ kind: 'parts', theory: partsTheory }, ...blocks].flatMap(({ kind, theory }) =>
  (theory?.equations ?? []).map((equation) => ({ ...equation, at: `${kind}, ${equation.title}` })),
);
const lines: readonly Written[] = equations.flatMap(({ at, text }) =>
  text.split('\n').map((line) => ({ at, text: line })),
);
const told: readonly Written[] = [...lines, ...equations.map(({ at, doc = '' }) => ({ at, text: doc }))];

/** How it is written, how it is not, and text that is wrong in this way. */
type Rule = readonly [instead: string, wrong: RegExp, planted: readonly string[]];
const WORD = '(?:above|and|at|for|in|stays|there|up|where)';

const everywhere: readonly Rule[] = [
  ['a b', /\*/, ['a*b']],
  ['−', /(?<!\p{L})-|-(?!\p{L})/u, ['a - b', '-b', 'e^-x']],
  ['√(a)', /sqrt|[√∛](?!\()/, ['sqrt(a)', '√a']],
  ['atan, e^(a), ln, lg', /\barc|⁻¹ ?\(|\bexp\b|\blog\b/, ['arctan(a)', 'tan⁻¹(a)', 'exp(a)', 'log a']],
  ['a²', /\^\(?\d(?![.\d])/, ['a^2', 'a^(2)']],
  ['a_0', /[₀-₉]/, ['a₀']],
  ['Greek letters', /\b(alpha|beta|gamma|delta|theta|lambda|mu|nu|pi|rho|sigma|tau|phi|psi|omega)\b/i, ['2 pi r']],
  ['≤ ≥ ≠ ± …', /<=|>=|!=|\+-|\+\/-|\.\.\./, ['a <= b', 'a +/- b', 'a + ...']],
  ['a/b', /÷| \/|\/ /, ['a ÷ b', 'a / b']],
  ['(a) (b)', /[)\]][([]/, ['(a + b)(c + d)']],
  ['½ a', /[½⅓⅔¼¾]\p{L}/u, ['½ρ']],
  ['3×10⁵', /\d ?· ?10[⁻⁰¹²³⁴-⁹]/, ['3 · 10⁵', '3·10⁻⁵']],
];

/** Words between the lines may write these otherwise. */
const inLines: readonly Rule[] = [
  ['a b', /(?<!ẑ )×(?!10[⁻⁰-⁹²³])/, ['a × b', 'a×b']],
  ['2 a', /\d[a-zα-ορ-ω](?![a-z])/i, ['2a', '(1 + 2λ)']],
  ['2π a', /π[\dA-Za-z]/, ['πd²']],
  ['a/(b c)', /\/\d+[a-zα-ορ-ω]/i, ['a/2c']],
  ['a [b]/c', /· \[/, ['(a/c) · [b]']],
  [
    '(a/b) c',
    new RegExp(
      String.raw`(?<!d\S{1,3})\/(?![\[Σ])(?:\((?:[^()]|\([^()]*\))*\)|[^\s(),\]/]+) (?!${WORD}\b|d\p{L}\b)[√(\[∫\p{L}]`,
      'u',
    ),
    ['π/4 (a − b)²', 'm/(2 k) ln(1 + a)', 'a/b c'],
  ],
  [
    'a = b + c',
    /[^\s(][=≈≥≤]|[=≈≥≤]\S|[^\s(^]\+|\+\S|[\p{L}\d)\]²³⁴]−|[^([^] −\p{L}(?<!= −\p{L})/u,
    ['a= b', 'a =b', 'a+b', 'a−b', 'a −b'],
  ],
  ['two spaces behind a comma', /(?<!,) {2}| {3}/, ['a = b  c = d']],
];

const wrongly = (texts: readonly Written[], wrong: RegExp): readonly Written[] =>
  texts.filter(({ text }) => wrong.test(text));

describe('equations are written', () => {
  test.each(everywhere)('%s', (_, wrong) => expect(wrongly(told, wrong)).toEqual([]));
  test.each(inLines)('%s, in lines', (_, wrong) => expect(wrongly(lines, wrong)).toEqual([]));
});

test.each([...everywhere, ...inLines])('what is written otherwise than %s is seen', (_, wrong, planted) =>
  expect(planted.filter((text) => !wrong.test(text))).toEqual([]),
);
