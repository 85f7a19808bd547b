import { unitSpellings } from '../units/index';

/** Characters that would make another unit of what stands before them: `m^5` is not the unit m, `N·s` not the unit N. */
const GOES_ON = '[\\p{L}\\p{N}_^²³⁴°%·⋅]';

/** What a keyboard may write for a character of a unit. */
const TYPED: Readonly<Record<string, string>> = {
  '²': '(?:²|\\^2)',
  '³': '(?:³|\\^3)',
  '⁴': '(?:⁴|\\^4)',
  '·': '[·⋅•]',
  µ: '[µ\\u03bc]',
  Ω: '[Ω\\u2126]',
  '°': '[°\\u00ba]',
  ' ': '[ \\u00a0\\u2009\\u202f]+',
};

const typed = (spelling: string): string =>
  [...spelling].map((c) => TYPED[c] ?? c.replace(/[\\^$.*+?()[\]{}|/]/, '\\$&')).join('');
const anyOf = (spellings: readonly string[]): string => spellings.map(typed).join('|');

const isMark = (spelling: string): boolean => /^["'″′”“’‘]/.test(spelling);
const marks = unitSpellings.filter(isMark);
const words = unitSpellings.filter((spelling) => !isMark(spelling));

/** Longest spelling first, so that the first that fits to a full stop is the longest. */
const UNIT = new RegExp(`^(?:(?:${anyOf(words)})(?!${GOES_ON})|${anyOf(marks)})`, 'u');
/** A unit whose smaller one follows without a space: `4ft1in`, `2lb10oz`. */
const CLOSE = /^(?:ft|lb)(?=[0-9])/;
const UNKNOWN_UNIT = /^(?!(?:and|or|not|then|else)(?![\p{L}\p{N}_]))[\p{L}_%°][\p{L}\p{N}_^²³⁴°%·⋅]*/u;
const SPACES = '[ \\t\\u00a0\\u2009\\u202f]';
const STROKE = '[/⁄]';
const RULER = '[¼½¾⅓⅔⅛⅜⅝⅞]';
const MIXED = new RegExp(`^[0-9]+(?:${SPACES}+[0-9]+${STROKE}[0-9]+(?![0-9.])|${SPACES}*${RULER})`);
const ONE_SIGN = new RegExp(`^${RULER}`);
const FRACTION = new RegExp(`^[0-9]+${STROKE}[0-9]+(?![0-9.])(${SPACES}*)`);
/** Thousands stand apart by one space; in a number with a point, too. */
const NUMBER = new RegExp(
  `^(?:[0-9]{1,3}(?:${SPACES}[0-9]{3})+(?![0-9/⁄])|[0-9]+)(?:\\.[0-9]+)?(?:[eE][+−-]?[0-9]+)?|^\\.[0-9]+(?:[eE][+−-]?[0-9]+)?`,
);
const POWER_OF_TEN = /^[0-9]+(?:\.[0-9]+)?×10[⁻]?[⁰¹²³⁴⁵⁶⁷⁸⁹]+/;

export type NumberKind = 'number' | 'fraction' | 'mixed';

/** The number that a text begins with. `3/32` counts as one number only before a unit; elsewhere it is a division. */
export function scanNumber(text: string): { readonly kind: NumberKind; readonly length: number } | undefined {
  if (ONE_SIGN.test(text)) return { kind: 'fraction', length: 1 };
  const mixed = MIXED.exec(text);
  if (mixed) return { kind: 'mixed', length: mixed[0].length };
  const fraction = FRACTION.exec(text);
  if (fraction && scanUnit(text.slice(fraction[0].length)) > 0) {
    return { kind: 'fraction', length: fraction[0].length - fraction[1]!.length };
  }
  const number = POWER_OF_TEN.exec(text) ?? NUMBER.exec(text);
  return number ? { kind: 'number', length: number[0].length } : undefined;
}

/** Length of the longest unit that a text begins with; 0 if there is none. */
export function scanUnit(text: string): number {
  return (UNIT.exec(text) ?? CLOSE.exec(text))?.[0].length ?? 0;
}

/** Length of a word that stands where a unit would, and is none. */
export function scanUnknownUnit(text: string): number {
  return UNKNOWN_UNIT.exec(text)?.[0].length ?? 0;
}
