import {
  bound,
  describeDimension,
  everydayUnit,
  type FormulaFunction,
  formatQuantity,
  functionNamed,
  type NameInfo,
  toSI,
  type Unit,
  unitNamed,
} from '../../engine/index';
import { wordAt } from './place';
import type { Vocabulary } from './vocabulary';

/** What a word of a formula is, to be read. */
export interface About {
  readonly kind: 'name' | 'function' | 'unit' | 'word';
  readonly from: number;
  readonly to: number;
  /** The word as it is written. */
  readonly word: string;
  /** What it's called and what it's worth now. */
  readonly is: string;
  /** What it does or means; '' where that's all. */
  readonly doc: string;
}

/** What stands at a place of a formula. Nothing for what nobody has named. */
export function aboutAt(text: string, at: number, vocabulary: Vocabulary): About | undefined {
  const node = wordAt(text, at);
  if (!node) return undefined;
  const { from, to } = node;
  const word = text.slice(from, to);
  const said = (kind: About['kind'], about: AboutWord | undefined): About | undefined =>
    about && { kind, from, to, ...about };
  switch (node.name) {
    case 'Name': {
      if (WORDS.has(word)) return said('word', aboutWord(word));
      const info = vocabulary.name(word);
      return said('name', info && aboutName(info, vocabulary));
    }
    case 'Function': {
      const known = functionNamed(word);
      return said('function', known && aboutFunction(known, word));
    }
    case 'Unit': {
      const known = unitNamed(word);
      return said('unit', known && aboutUnit(known));
    }
    default:
      return said('word', aboutWord(word));
  }
}

export type AboutWord = Pick<About, 'word' | 'is' | 'doc'>;

export function aboutName(info: NameInfo, vocabulary: Vocabulary): AboutWord {
  const { path, title, doc } = info;
  const value = vocabulary.shown(path);
  const now = value === '–' ? 'without an answer now' : `now ${value}`;
  return { word: path, is: `${title === '' ? path : title}, ${now}.`, doc };
}

export function aboutFunction(known: FormulaFunction, word: string): AboutWord {
  const [least, most] = known.arity;
  const many = most > least ? `${least} values or more` : least === 1 ? '1 value' : `${least} values`;
  return { word: `${word}( )`, is: `A function of ${many}.`, doc: known.doc };
}

/** Enough to convert with, few enough to read. */
const UNIT_DIGITS = 6;

export function aboutUnit(unit: Unit): AboutWord {
  const everyday = everydayUnit(unit.dimension);
  const known = unitNamed(everyday);
  const other = known && known.name !== unit.name && unit.offset === 0 && known.offset === 0 && everyday !== '';
  const size = other
    ? `${bound('1', unit.name)} is ${formatQuantity(toSI(1, unit.name), everyday, { significant: UNIT_DIGITS })}.`
    : '';
  return { word: unit.name, is: `${capital(unit.title)}, ${describeDimension(unit.dimension)}.`, doc: size };
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** What words and signs mean that are neither names nor functions. */
const BETWEEN = 'A word between conditions.';
const CONDITION = 'A word of a condition.';
const PI = 'Circumference of a circle over its diameter, 3.14159….';

const WORDS: ReadonlyMap<string, readonly [is: string, doc: string]> = new Map([
  ['pi', ['A number.', PI]],
  ['π', ['A number.', PI]],
  ['and', [BETWEEN, 'Both conditions hold.']],
  ['or', [BETWEEN, 'One condition holds, or both.']],
  ['not', [BETWEEN, 'The condition behind it does not hold.']],
  ['if', [CONDITION, 'Begins a condition: if a < b then c else d.']],
  ['then', [CONDITION, 'What holds where the condition does.']],
  ['else', [CONDITION, 'What holds where the condition does not.']],
]);

export const knownWords: readonly string[] = ['pi', 'and', 'or', 'not', 'if', 'then', 'else'];

export function aboutWord(word: string): AboutWord | undefined {
  const known = WORDS.get(word);
  return known && { word, is: known[0], doc: known[1] };
}
