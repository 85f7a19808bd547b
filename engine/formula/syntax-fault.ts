import { type FormulaFault, fault } from './fault';

const ALLOWED =
  'Allowed are numbers with their units, names, + − × ÷ ^, parentheses, functions, comparisons and condition ? a : b.';
/** What a formula may not end with, or have in front of another sign: a sign that wants a value behind it. */
const WANTS_VALUE = /(?:[-+−–*×/÷^<>=≤≥≠?:,(∧∨¬]|(?<![\p{L}\p{N}_.])(?:and|or|not))$/u;
const STARTS_VALUE = /^(?:[\p{L}\p{N}_(]|\.[0-9])/u;
const SIGN = /^(?:<=|>=|!=|[-+−–*×/÷^<>=≤≥≠?:,∧∨²³]|(?:and|or)(?![\p{L}\p{N}_.]))/u;
/** Signs of other notations, and what to write here. */
const FOREIGN: readonly (readonly [RegExp, string])[] = [
  [/==$/, 'Write = to compare.'],
  [/<>$/, 'Write ≠ or != for "not equal".'],
  [/\*\*$/, 'Write ^ for a power.'],
  [/&&?$/, 'Write and.'],
  [/\|\|?$/, 'Write or.'],
  [/!$/, 'Write not.'],
  [/;$/, 'Write a comma between the arguments of a function.'],
];

/** The first thing in a text that the grammar can't take, as sentences. `at`: where the reader stopped. */
export function syntaxFault(text: string, at: number): FormulaFault {
  const from = at + /^\s*/.exec(text.slice(at))![0].length;
  const before = text.slice(0, from).trimEnd();
  const rest = text.slice(from);
  if (rest === '') return endFault(text, before);
  return (
    foreignSign(text, from) ?? closing(text, from, before) ?? comma(text, from, before) ?? order(text, from, before)
  );
}

function endFault(text: string, before: string): FormulaFault {
  const place = { from: before.length, to: text.length };
  if (before === '') {
    return fault(place, 'Nothing is written here.', '', 'Write a number with its unit, such as 18.3 m, or a formula.');
  }
  const sign = lastSign(before);
  const open = openParenthesis(before);
  if (sign === '(') return fault(at(open), 'This ( has nothing behind it.', '', 'Write a value and ) behind it.');
  if (sign !== undefined) {
    return fault(
      place,
      `A value is missing at the end, behind ${sign}.`,
      '',
      `Write a value behind ${sign}, or leave it out.`,
    );
  }
  if (open >= 0) return fault(at(open), 'This ( is not closed.', '', 'Write ) where it ends.');
  return fault(
    place,
    'The formula ends too early.',
    'A choice is written condition ? a : b.',
    'Write : and the other answer.',
  );
}

const at = (from: number): { from: number; to: number } => ({ from, to: from + 1 });
const lastSign = (before: string): string | undefined => WANTS_VALUE.exec(before)?.[0];

/** Place of the innermost parenthesis that is still open; −1 if none is. */
function openParenthesis(before: string): number {
  const open: number[] = [];
  for (let i = 0; i < before.length; i++) {
    if (before[i] === '(') open.push(i);
    else if (before[i] === ')') open.pop();
  }
  return open.at(-1) ?? -1;
}

function foreignSign(text: string, from: number): FormulaFault | undefined {
  if (text[from] === '=' && text.slice(0, from).trim() === '') {
    return fault(
      at(from),
      '= stands in front of the formula.',
      '',
      'Leave it out: a formula begins with its first value.',
    );
  }
  for (const [pattern, mend] of FOREIGN) {
    for (const to of [from + 2, from + 1]) {
      const sign = pattern.exec(text.slice(Math.max(0, from - 1), to))?.[0];
      if (sign === undefined) continue;
      return fault({ from: to - sign.length, to }, `${sign} is not a sign of a formula.`, '', mend);
    }
  }
  return undefined;
}

function closing(text: string, from: number, before: string): FormulaFault | undefined {
  if (text[from] !== ')') return undefined;
  if (openParenthesis(before) < 0) {
    return fault(at(from), 'This ) has no ( in front of it.', '', 'Leave it out, or write ( where it begins.');
  }
  const sign = lastSign(before);
  if (sign === '(') return fault(at(from), 'These parentheses hold nothing.', '', 'Write a value between them.');
  if (sign !== undefined) {
    return fault(
      at(from),
      `A value is missing between ${sign} and ).`,
      '',
      `Write a value behind ${sign}, or leave it out.`,
    );
  }
  return fault(
    at(from),
    'A choice ends here without its other answer.',
    'It is written condition ? a : b.',
    'Write : and the other answer.',
  );
}

function comma(text: string, from: number, before: string): FormulaFault | undefined {
  if (text[from] !== ',' || lastSign(before) !== undefined) return undefined;
  const left = /[0-9]+$/.exec(before)?.[0];
  const right = /^,([0-9]+)/.exec(text.slice(from))?.[1];
  const allowed = 'A comma stands only between the arguments of a function.';
  if (left !== undefined && right !== undefined) {
    const place = { from: from - left.length, to: from + 1 + right.length };
    return fault(
      place,
      `${left},${right} has a comma in it.`,
      allowed,
      `Write decimals with a point: ${left}.${right}.`,
    );
  }
  return fault(at(from), 'A comma stands here.', allowed, 'Leave it out.');
}

function order(text: string, from: number, before: string): FormulaFault {
  const rest = text.slice(from);
  const sign = SIGN.exec(rest)?.[0];
  const previous = lastSign(before);
  if (sign !== undefined && (before === '' || previous !== undefined)) {
    const place = { from, to: from + sign.length };
    const where = before === '' ? `in front of ${sign}` : `between ${previous} and ${sign}`;
    return fault(place, `A value is missing ${where}.`, '', `Write a value in front of ${sign}, or leave it out.`);
  }
  if (sign === ':')
    return fault(
      at(from),
      'This : has no ? in front of it.',
      'A choice is written condition ? a : b.',
      'Leave it out, or write the condition and ?.',
    );
  if (STARTS_VALUE.test(rest) && before !== '' && previous === undefined) {
    const word = /^[\p{L}\p{N}_.]+|^./u.exec(rest)![0];
    return fault(
      { from, to: from + word.length },
      `Two values stand side by side, the second is ${word}.`,
      '',
      'Write a sign between them: + − × or ÷.',
    );
  }
  const character = String.fromCodePoint(text.codePointAt(from)!);
  return fault(
    { from, to: from + character.length },
    `${character} has no meaning in a formula.`,
    ALLOWED,
    'Leave it out.',
  );
}
