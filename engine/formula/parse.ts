import type { Tree } from '@lezer/common';
import { unitNamed } from '../units/index';
import type { Expression, Literal } from './expression';
import { attempt, fault, type Refused } from './fault';
import { parser } from './formula.parser';
import { numberOf, readNode } from './read';
import { syntaxFault } from './syntax-fault';

export type ParseResult = { readonly ok: true; readonly expression: Expression } | Refused;

/** Longer texts are refused, so that no text can nest deeper than a call stack. */
const LONGEST = 2000;
const LONE_FRACTION = /^\s*(?:([-−–+])\s*)?([0-9]+\/[0-9]+)\s*$/;

/** Reads a text as an expression, or says what is wrong with it and where. */
export function parseFormula(text: string): ParseResult {
  if (text.length > LONGEST) {
    const found = `The formula has ${text.length} characters.`;
    return {
      ok: false,
      fault: fault(
        { from: LONGEST, to: text.length },
        found,
        `At most ${LONGEST} are allowed.`,
        'Put a part of it on a formula line of its own.',
      ),
    };
  }
  const fraction = loneFraction(text);
  if (fraction) return { ok: true, expression: fraction };
  const tree = parser.parse(text);
  const error = firstError(tree);
  if (error !== undefined) return { ok: false, fault: syntaxFault(text, error) };
  return attempt(() => ({ expression: readNode(tree.topNode, text) }));
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
function loneFraction(text: string): Expression | undefined {
  const found = LONE_FRACTION.exec(text);
  if (!found) return undefined;
  const [, sign, digits] = found;
  const from = text.indexOf(digits!);
  const to = from + digits!.length;
  const literal: Literal = { kind: 'literal', from, to, digits: digits!, number: numberOf(digits!), unit: '' };
  if (sign === undefined) return literal;
  const signAt = text.indexOf(sign);
  return sign === '+' ? { ...literal, from: signAt } : { kind: 'negative', from: signAt, to, of: literal };
}

function firstError(tree: Tree): number | undefined {
  const cursor = tree.cursor();
  do {
    if (cursor.type.isError) return cursor.from;
  } while (cursor.next());
  return undefined;
}
