import type { SyntaxNode, Tree } from '@lezer/common';
import { unitNamed } from '../units/index';
import type { Expression, Literal } from './expression';
import { attempt, Refusal, type Refused, refuse } from './fault';
import { parser } from './formula.parser';
import { readLiteral } from './literal';
import { readNode } from './read';
import { syntaxFault } from './syntax-fault';

export type ParseResult = { readonly ok: true; readonly expression: Expression } | Refused;

/** Longer texts are refused, so that none can nest deeper than a call stack. */
const LONGEST = 2000;
const LONE_FRACTION = /^\s*(?:([-−–+])\s*)?([0-9]+\/[0-9]+)\s*$/;

/** Reads a text as an expression, or says what is wrong with it and where. */
export function parseFormula(text: string): ParseResult {
  return attempt(() => {
    if (text.length > LONGEST) refuseLength(text);
    if (LONE_FRACTION.test(text)) return { expression: readFraction(text) };
    const tree = parser.parse(text);
    return { expression: readNode(firstFlaw(tree, text) ?? tree.topNode, text) };
  });
}

/**
 * Reads the text of a field: one bare signed number is in the field's unit, everything else is a formula in which
 * quantities carry their units.
 */
export function readText(text: string, unit: string): ParseResult {
  const field = unitNamed(unit);
  if (field === undefined) throw new RangeError(`${unit} is not a unit; a name from the unit table is allowed`);
  const result = parseFormula(text);
  if (!result.ok) return result;
  const { expression } = result;
  const within = (literal: Literal): Literal => ({ ...literal, unit: field.name });
  if (isBare(expression)) return { ok: true, expression: within(expression) };
  if (expression.kind === 'negative' && isBare(expression.of)) {
    return { ok: true, expression: { ...expression, of: within(expression.of) } };
  }
  return result;
}

const isBare = (e: Expression): e is Literal => e.kind === 'literal' && e.unit === '';

/** `3/32` alone is a number as it stands on a ruler, not a division. */
function readFraction(text: string): Expression {
  const [, sign, digits] = LONE_FRACTION.exec(text) as unknown as [string, string | undefined, string];
  const from = text.indexOf(digits);
  const literal = readLiteral({ from, to: from + digits.length }, digits, '');
  if (sign === undefined) return literal;
  const signed = { from: text.indexOf(sign), to: literal.to };
  return sign === '+' ? { ...literal, ...signed } : { kind: 'negative', ...signed, of: literal };
}

/**
 * Refuses the first place that the grammar could not take. A literal with an unknown unit in front of it is given back to
 * be refused by its own reader, since what follows may be wrong only because of it.
 */
function firstFlaw(tree: Tree, text: string): SyntaxNode | undefined {
  const cursor = tree.cursor();
  do {
    if (cursor.type.isError) throw new Refusal(syntaxFault(text, cursor.from));
    if (cursor.type.is('UnknownUnit')) return cursor.node.parent!;
  } while (cursor.next());
  return undefined;
}

function refuseLength(text: string): never {
  return refuse(
    { from: LONGEST, to: text.length },
    `The formula has ${text.length} characters.`,
    `At most ${LONGEST} are allowed.`,
    'Put a part of it on a formula line of its own.',
  );
}
