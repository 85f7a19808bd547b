import { unitNamed } from '../units/index';
import { type FormulaFault, fault, inPlace } from './fault';
import { scanNumber, scanUnit } from './scan';

const SIGN = 'such as + or ×';
const WORD_HERE = /^[\p{L}_][\p{L}\p{N}_.]*/u;
const WORD_BEFORE = /(?<![\p{L}\p{N}_.])[\p{L}_][\p{L}\p{N}_.]*$/u;
const NUMBERS = /(?<![\p{L}\p{N}_.])[0-9.¼½¾⅓⅔⅛⅜⅝⅞]/gu;
const UNIT_PLACE = 'A unit stands behind a number and nowhere else.';

/** A number with its unit, or several that make one, `4 ft 1 in`. */
interface Amount {
  /** As it was written. */
  readonly text: string;
  /** The last number and the unit behind it; '' for none. */
  readonly number: string;
  readonly unit: string;
}

/**
 * Where a value stands behind another without a sign and one of the two is no value at all: words about a number, a unit that has no
 * number, one name written as two. Nothing where two values stand there. `before` ends and `rest` begins without spaces.
 */
export function besideFault(before: string, rest: string, from: number): FormulaFault | undefined {
  const amount = amountAtEnd(before);
  const word = WORD_HERE.exec(rest)?.[0];
  if (word !== undefined) return wordBehind(before, amount, { word, from, to: from + word.length });
  if (rest[0] === '.' && /[0-9]$/.test(before)) {
    const whole = `${/[0-9.]+$/.exec(before)![0]}${/^[0-9.]+/.exec(rest)![0]}`;
    return fault({ from, to: from + 1 }, `${whole} has more than one point in it.`, '', 'Write one number.');
  }
  if (rest[0] === '(' && amount && amount.unit !== '') {
    const mend = `Write a sign between them, ${SIGN}, or leave out what stands in parentheses.`;
    return fault({ from, to: from + 1 }, `A parenthesis stands behind ${amount.text} without a sign.`, '', mend);
  }
  return amount ? undefined : wordInFront(before, rest, from);
}

interface Word {
  readonly word: string;
  readonly from: number;
  readonly to: number;
}

function wordBehind(before: string, amount: Amount | undefined, place: Word): FormulaFault | undefined {
  const { word } = place;
  if (word === 'if') {
    const allowed = 'A condition is written if condition then a else b.';
    return fault(
      place,
      'if stands behind a value.',
      allowed,
      `Begin with it, or write a sign in front of it, ${SIGN}.`,
    );
  }
  if (word === 'not') return undefined;
  if (amount && isUnit(word)) return secondUnit(amount, place);
  if (amount) {
    const leave = `leave out what stands behind ${amount.text}.`;
    const mend = /^x$/i.test(word) ? 'Write × or * to multiply' : `Write a sign between them, ${SIGN}`;
    return fault(place, `${word} stands behind ${amount.text} without a sign.`, '', `${mend}, or ${leave}`);
  }
  const name = WORD_BEFORE.exec(before)?.[0];
  if (isUnit(word)) {
    return fault(
      place,
      `${word} stands behind ${name ?? 'parentheses'}.`,
      UNIT_PLACE,
      `Leave it out, or write × 1 ${word}.`,
    );
  }
  if (name === undefined || `${name}${word}`.includes('.')) return undefined;
  const both = { from: before.length - name.length, to: place.to };
  const mend = `Write ${name}_${word} if that is the name, or a sign between them, ${SIGN}.`;
  return fault(both, `${name} and ${word} stand side by side.`, 'A name is one word.', mend);
}

function secondUnit({ text, number, unit }: Amount, place: Word): FormulaFault {
  const { word } = place;
  const product = unitNamed(`${unitNamed(unit)?.name}·${unitNamed(word)?.name}`);
  const found = `${word} stands behind ${text}.`;
  const allowed = 'A number has one unit.';
  if (unit === '' || !product) return fault(place, found, allowed, 'Leave it out.');
  return fault(place, found, allowed, `Did you mean ${number} ${product.name}?`);
}

function wordInFront(before: string, rest: string, from: number): FormulaFault | undefined {
  const word = WORD_BEFORE.exec(before)?.[0];
  const number = scanNumber(rest)?.length ?? 0;
  if (word === undefined || number === 0) return undefined;
  const place = { from: before.length - word.length, to: before.length };
  const digits = rest.slice(0, number);
  if (isUnit(word) && scanUnit(rest.slice(number).trimStart()) === 0) {
    const meant = `${digits} ${word}`;
    const repair = inPlace({ from: place.from, to: from + number }, meant);
    return fault(place, `${word} stands in front of its number.`, UNIT_PLACE, `Write ${meant}.`, repair);
  }
  const mend = `Write a sign between them, ${SIGN}, or leave ${word} out.`;
  return fault(place, `${word} stands in front of ${digits} without a sign.`, '', mend);
}

const isUnit = (word: string): boolean => scanUnit(word) === word.length;

/** The amount that a text ends with: all of it is read from a number on. */
function amountAtEnd(text: string): Amount | undefined {
  for (const { index } of text.matchAll(NUMBERS)) {
    for (let at = index; ; ) {
      const digits = scanNumber(text.slice(at))?.length ?? 0;
      if (digits === 0) break;
      const behind = at + digits + /^\s*/.exec(text.slice(at + digits))![0].length;
      const end = behind + scanUnit(text.slice(behind));
      const number = text.slice(at, at + digits);
      if (end >= text.length) return { text: text.slice(index), number, unit: text.slice(behind, end) };
      at = end + /^\s*/.exec(text.slice(end))![0].length;
    }
  }
  return undefined;
}
