import type { SyntaxNode, Tree } from '@lezer/common';
import { type UnitSet, unitNamed } from '../units/index';
import type { Expression, Literal } from './expression';
import { attempt, Refusal, type Refused, refuse } from './fault';
import { parser } from './formula.parser';
import { readLone, tidied } from './lone';
import { readNode } from './read';
import { syntaxFault } from './syntax-fault';

export type ParseResult = { readonly ok: true; readonly expression: Expression } | Refused;

/** Longer texts are refused, so that none can nest deeper than a call stack. */
const LONGEST = 2000;

/** Texts are read again whenever a design is compiled: so many of the last ones are known. */
const KNOWN = 4000;
const known: Readonly<Record<UnitSet, Map<string, ParseResult>>> = { metric: new Map(), inch_pound: new Map() };

/** Reads a text as an expression, or says what is wrong with it and where; `set`: the units of its examples. */
export function parseFormula(text: string, set: UnitSet = 'metric'): ParseResult {
  const before = known[set].get(text);
  if (before) return before;
  const result = parse(text, set);
  if (known[set].size >= KNOWN) known[set].clear();
  known[set].set(text, result);
  return result;
}

function parse(text: string, set: UnitSet): ParseResult {
  return attempt(() => {
    if (text.length > LONGEST) refuseLength(text);
    const plain = tidied(text);
    const lone = readLone(plain, set);
    if (lone) return { expression: lone };
    const tree = parser.parse(plain);
    return { expression: readNode(firstFlaw(tree, plain, set) ?? tree.topNode, plain, set) };
  });
}

/**
 * Reads the text of a field: one bare signed number is in the field's unit, everything else is a formula in which
 * quantities carry their units.
 */
export function readText(text: string, unit: string, set: UnitSet = 'metric'): ParseResult {
  const field = unitNamed(unit);
  if (field === undefined) throw new RangeError(`${unit} is not a unit; a name from the unit table is allowed`);
  const result = parseFormula(text, set);
  if (!result.ok) return result;
  const { expression } = result;
  const within = (literal: Literal): Literal => ({ ...literal, unit: field.name });
  // A temperature may be written 75°.
  const isBare = (e: Expression): e is Literal =>
    e.kind === 'literal' && (e.unit === '' || (e.unit === '°' && field.offset !== 0));
  if (isBare(expression)) return { ok: true, expression: within(expression) };
  if (expression.kind === 'negative' && isBare(expression.of)) {
    return { ok: true, expression: { ...expression, of: within(expression.of) } };
  }
  return result;
}

/**
 * Refuses the first place that the grammar could not take. A literal with an unknown unit in front of it is given back to
 * be refused by its own reader, since what follows may be wrong only because of it.
 */
function firstFlaw(tree: Tree, text: string, set: UnitSet): SyntaxNode | undefined {
  const cursor = tree.cursor();
  do {
    if (cursor.type.isError) throw new Refusal(syntaxFault(text, cursor.from, set));
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
