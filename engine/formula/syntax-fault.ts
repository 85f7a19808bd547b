import type { UnitSet } from '../units/index';
import { type FormulaFault, fault } from './fault';
import { foreignFault } from './foreign';
import { functionNamed } from './functions';
import { besideFault } from './side-by-side';

const ALLOWED =
  'Allowed are numbers with their units, names, + − × ÷ ^, parentheses, functions, comparisons and if condition then a else b.';
const CHOICE = 'A condition is written if condition then a else b.';
/** A sign that wants a value behind it. */
const WANTS_VALUE = /(?:<=|>=|!=|[-+−–*×/÷^<>=≤≥≠?:,(∧∨¬]|(?<![\p{L}\p{N}_.])(?:and|or|not|if|then|else))$/u;
/** A sign that wants a value in front of it. */
const FOLLOWS_VALUE = /^(?:<=|>=|!=|[*×/÷^<>=≤≥≠?:,∧∨²³]|(?:and|or|then|else)(?![\p{L}\p{N}_.]))/u;
const STARTS_VALUE = /^(?:[\p{L}\p{N}_.]+|\()/u;

/** Where the reader stopped, and what lies on either side. */
interface Stop {
  readonly text: string;
  readonly from: number;
  readonly before: string;
  readonly rest: string;
  /** The sign in front, if it still wants a value. */
  readonly hungry: string | undefined;
}

/** The first thing in a text that the grammar can't take, as sentences. `at`: where the reader stopped. */
export function syntaxFault(text: string, at: number, set: UnitSet): FormulaFault {
  const from = at + /^\s*/.exec(text.slice(at))![0].length;
  const before = text.slice(0, from).trimEnd();
  const stop: Stop = { text, from, before, rest: text.slice(from), hungry: WANTS_VALUE.exec(before)?.[0] };
  if (stop.rest === '') return atEnd(stop, set);
  return foreignFault(text, from) ?? atClosing(stop) ?? atComma(stop) ?? atSign(stop) ?? atValue(stop) ?? atOther(stop);
}

/** A comma or a colon would be taken for the sentence's own. */
const said = (sign: string): string => (sign === ',' ? 'the comma' : sign === ':' ? 'the colon' : sign);
const one = (from: number): { from: number; to: number } => ({ from, to: from + 1 });

const EXAMPLE: Readonly<Record<UnitSet, string>> = { metric: '18.3 m', inch_pound: '60 ft' };

function atEnd({ text, before, hungry }: Stop, set: UnitSet): FormulaFault {
  const place = { from: before.length, to: text.length };
  if (before === '') {
    return fault(
      place,
      'Nothing is written here.',
      '',
      `Write a number with its unit, such as ${EXAMPLE[set]}, or a formula.`,
    );
  }
  const open = openParenthesis(before);
  if (hungry === '(') return fault(one(open), 'This ( has nothing behind it.', '', 'Write a value and ) behind it.');
  if (hungry !== undefined) return missing(place, `at the end, behind ${said(hungry)}`, `behind ${said(hungry)}`);
  if (open >= 0) return fault(one(open), 'This ( is not closed.', '', 'Write ) where it ends.');
  return lacking(before, place);
}

/** The text ends, or its parentheses do, while a condition has not all its answers. */
function lacking(before: string, place: { from: number; to: number }): FormulaFault {
  const wanted = wantedWord(before);
  return wanted === 'then'
    ? fault(place, 'A condition has no answers.', CHOICE, 'Write then and an answer, else and the other answer.')
    : fault(place, 'A condition ends without its other answer.', CHOICE, `Write ${wanted} and the other answer.`);
}

/** What the innermost open condition wants next: then, else or, where it was begun with ?, the colon. */
function wantedWord(before: string): 'then' | 'else' | ':' | undefined {
  const open: ('then' | 'else' | ':' | '(')[] = [];
  for (const [word] of before.matchAll(/[()?:]|(?<![\p{L}\p{N}_.])(?:if|then|else)(?![\p{L}\p{N}_.])/gu)) {
    if (word === '(') open.push('(');
    else if (word === ')') open.length = Math.max(open.lastIndexOf('('), 0);
    else if (word === 'if') open.push('then');
    else if (word === '?') open.push(':');
    else if (word === ':' || word === open.at(-1)) {
      open.pop();
      if (word === 'then') open.push('else');
    }
  }
  const inside = open.slice(open.lastIndexOf('(') + 1).at(-1);
  return inside === '(' ? undefined : inside;
}

function missing(place: { from: number; to: number }, where: string, mend: string): FormulaFault {
  return fault(place, `A value is missing ${where}.`, '', `Write a value ${mend}, or leave it out.`);
}

/** Place of the innermost parenthesis that is still open; −1 if none is. */
function openParenthesis(before: string): number {
  const open: number[] = [];
  for (let i = 0; i < before.length; i++) {
    if (before[i] === '(') open.push(i);
    else if (before[i] === ')') open.pop();
  }
  return open.at(-1) ?? -1;
}

function atClosing({ from, before, rest, hungry }: Stop): FormulaFault | undefined {
  if (rest[0] !== ')') return undefined;
  const place = one(from);
  if (openParenthesis(before) < 0) {
    return fault(place, 'This ) has no ( in front of it.', '', 'Leave it out, or write ( where it begins.');
  }
  if (hungry === '(') return fault(place, 'These parentheses hold nothing.', '', 'Write a value between them.');
  if (hungry !== undefined) return missing(place, `between ${said(hungry)} and )`, `behind ${said(hungry)}`);
  return lacking(before, place);
}

function atComma({ from, before, rest, hungry }: Stop): FormulaFault | undefined {
  if (rest[0] !== ',' || hungry !== undefined || before === '') return undefined;
  const allowed = 'A comma stands only between the arguments of a function.';
  const left = /[0-9]+$/.exec(before)?.[0];
  const right = /^,([0-9]+)/.exec(rest)?.[1];
  if (left === undefined || right === undefined)
    return fault(one(from), 'A comma stands here.', allowed, 'Leave it out.');
  const place = { from: from - left.length, to: from + 1 + right.length };
  const decimal = `with a point: ${left}.${right}`;
  const mend =
    right.length === 3
      ? `Write thousands without it: ${left}${right}; decimals ${decimal}.`
      : `Write decimals ${decimal}.`;
  return fault(place, `${left},${right} has a comma in it.`, allowed, mend);
}

function atSign({ from, before, rest, hungry }: Stop): FormulaFault | undefined {
  const sign = FOLLOWS_VALUE.exec(rest)?.[0];
  if (sign === undefined) return undefined;
  const place = { from, to: from + sign.length };
  if (before === '') return missing(place, `in front of ${said(sign)}`, `in front of ${said(sign)}`);
  if (hungry !== undefined)
    return missing(place, `between ${said(hungry)} and ${said(sign)}`, `in front of ${said(sign)}`);
  const wanted = wantedWord(before);
  if (sign === ':' || sign === 'then' || sign === 'else') {
    if ((sign === 'else' && wanted === 'then') || (sign === ':' && wanted !== undefined)) {
      return fault(
        place,
        `${sign === ':' ? 'A colon' : sign} stands where ${wanted} is wanted.`,
        CHOICE,
        `Write ${wanted}.`,
      );
    }
    const front = sign === 'then' ? 'if' : sign === 'else' ? 'then' : '?';
    const mend = `Leave it out, or write the condition and ${front} in front.`;
    return fault(place, `This ${sign} has no ${front} in front of it.`, CHOICE, mend);
  }
  return undefined;
}

function atValue({ from, before, rest, hungry }: Stop): FormulaFault | undefined {
  const value = STARTS_VALUE.exec(rest)?.[0];
  if (value === undefined || /^\.+$/.test(value) || before === '' || hungry !== undefined) return undefined;
  const place = { from, to: from + value.length };
  const called = /[\p{L}\p{N}_]+$/u.exec(before)?.[0];
  if (called !== undefined && functionNamed(called)) {
    return fault(place, `${called} has no parentheses.`, '', `Write ${called}( ) with its argument in it.`);
  }
  return (
    besideFault(before, rest, from) ??
    fault(place, 'Two values stand side by side.', '', 'Write a sign between them, such as + or ×.')
  );
}

function atOther({ from, rest }: Stop): FormulaFault {
  if (rest[0] === '.') {
    return fault(
      one(from),
      'This point belongs to no number and no name.',
      '',
      'Leave it out, or write what belongs behind it.',
    );
  }
  const character = String.fromCodePoint(rest.codePointAt(0)!);
  const place = { from, to: from + character.length };
  return fault(place, `${character} has no meaning in a formula.`, ALLOWED, 'Leave it out.');
}
