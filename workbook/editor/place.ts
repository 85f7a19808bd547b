import type { SyntaxNode, Tree } from '@lezer/common';
import { formulaParser, type NameInfo } from '../../engine/index';
import type { Vocabulary } from './vocabulary';

/** Characters of a name up to the caret, and those behind it that belong to it. */
const NAME_BEFORE = /[\p{L}_][\p{L}\p{N}_.]*$/u;
const NAME_AFTER = /^[\p{L}\p{N}_.]*/u;
/** Characters of a unit behind its number. */
const UNIT_BEFORE = /[\p{L}%°µΩ][\p{L}\p{N}%°µΩ·⋅^²³⁴/]*$/u;
/** A word behind which a value stands. */
const WANTS_VALUE = /(?<![\p{L}\p{N}_.])(?:and|or|not|if|then|else)\s*$/u;
const NUMBERS: ReadonlySet<string> = new Set(['Number', 'Fraction', 'MixedNumber']);

/** Where the caret stands in a formula: what could be written there, over which characters. */
export interface FormulaPlace {
  readonly from: number;
  readonly to: number;
  readonly word: string;
}

/** The unit that is being written behind a number; its word is empty behind the number alone. */
export function unitPlace(text: string, at: number): FormulaPlace | undefined {
  const before = text.slice(0, at);
  const from = UNIT_BEFORE.exec(before)?.index ?? at;
  if (!behindNumber(text, from)) return undefined;
  return { from, to: at, word: text.slice(from, at) };
}

/** The name that is being written. */
export function namePlace(text: string, at: number): FormulaPlace | undefined {
  const from = NAME_BEFORE.exec(text.slice(0, at))?.index ?? at;
  if (behindNumber(text, from)) return undefined;
  // Behind a whole value only a sign can stand.
  const before = text.slice(0, from);
  if (from === at && /[\p{L}\p{N}_.)]\s*$/u.test(before) && !WANTS_VALUE.test(before)) return undefined;
  const to = at + NAME_AFTER.exec(text.slice(at))![0].length;
  return { from, to, word: text.slice(from, at) };
}

function behindNumber(text: string, from: number): boolean {
  const end = text.slice(0, from).trimEnd().length;
  return end > 0 && NUMBERS.has(parse(text.slice(0, end)).resolveInner(end, -1).name);
}

const parse = (text: string): Tree => formulaParser.parse(text);

/** The names that could be compared with what stands on the other side of the sign in front of a place. */
export function comparedWith(text: string, { from }: FormulaPlace, vocabulary: Vocabulary): NameInfo | undefined {
  const other = /([\p{L}_][\p{L}\p{N}_.]*)\s*(?:=|!=|≠)\s*$/u.exec(text.slice(0, from))?.[1];
  return other === undefined ? undefined : vocabulary.name(other);
}

/** The smallest piece of the formula around a place that is a word of its own: a name, a function, a unit. */
export function wordAt(text: string, at: number): SyntaxNode | undefined {
  const tree = parse(text);
  for (const side of [-1, 1] as const) {
    const node = tree.resolveInner(at, side);
    if (WORDS.has(node.name)) return node;
  }
  return undefined;
}

const WORDS: ReadonlySet<string> = new Set([
  'Name',
  'Function',
  'Unit',
  'AndSign',
  'OrSign',
  'NotSign',
  'If',
  'Then',
  'Else',
]);
