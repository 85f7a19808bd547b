import { type UnitSet, unitNamed } from '../units/index';
import { digitsOf, numberOf } from './digits';
import type { Expression, Literal } from './expression';
import { inPlace, refuse } from './fault';
import { readLiteral } from './literal';
import { scanUnit } from './scan';

/*
 * What is read only where it is the whole text of an entry: inside a formula the same signs mean something else, a division,
 * the answers of a choice or a name.
 */

const FRACTION = /^[0-9]+\/[0-9]+$/;
const CLOCK = /^(?:([0-9]+):)?([0-9]+):([0-5][0-9](?:\.[0-9]+)?)(?:\s*(?:s|sec|min)\.?)?$/;
/** An engine by its trade number, hundredths of a cubic inch; 049 and 061 are thousandths. Common practice, no source. */
const TRADE_NUMBER = /^an? +\.?([0-9]{2,3})$/i;
const FRACTION_BEHIND = /^([0-9]+)\s*([^\s0-9]+)\s+([0-9]+\/[0-9]+)$/;
const TWO_SIZES = /^([0-9.]+)\s*[xX]\s*([0-9.]+)$/;

/** Digits that are printed without a unit behind them, since they say it themselves. */
export const saysItsUnit = (digits: string): boolean => CLOCK.test(digits) || TRADE_NUMBER.test(digits);

/** A number in plain digits and a unit as the tables spell it: what most entries are. */
const PLAIN = /^(?<number>[0-9]+(?:\.[0-9]+)?)[ \t\u00a0\u2009\u202f]*(?<unit>[^0-9\s.+\-−–(].*)?$/su;

/** A text that is read as a whole; undefined where the grammar shall read it. */
export function readLone(text: string, set: UnitSet): Expression | undefined {
  const [, before, sign, rest] = /^(\s*(?:([-−–+])\s*)?)(.*?)\s*$/s.exec(text) as unknown as [
    string,
    string,
    string | undefined,
    string,
  ];
  const literal = readWhole(rest, before.length, set);
  if (literal === undefined || sign === undefined) return literal;
  const signed = { from: text.indexOf(sign), to: literal.to };
  return sign === '+' ? { ...literal, ...signed } : { kind: 'negative', ...signed, of: literal };
}

function readWhole(typed: string, from: number, set: UnitSet): Literal | undefined {
  const place = { from, to: from + typed.length };
  const plain = PLAIN.exec(typed)?.groups as { number: string; unit?: string } | undefined;
  if (plain && (plain.unit === undefined || unitNamed(plain.unit))) {
    return readLiteral([{ ...place, typed: plain.number, spelled: plain.unit ?? '' }], set);
  }
  if (FRACTION.test(typed)) return readLiteral([{ ...place, typed, spelled: '' }], set);
  const clock = CLOCK.exec(typed);
  if (clock) {
    const [, hours = '0', minutes, seconds] = clock;
    const number = Number(hours) * 3600 + Number(minutes) * 60 + Number(seconds);
    return { kind: 'literal', ...place, digits: typed, number, unit: 's' };
  }
  const trade = TRADE_NUMBER.exec(typed);
  if (trade) return { kind: 'literal', ...place, digits: typed, number: displacementNumbered(trade[1]!), unit: 'in³' };
  const behind = FRACTION_BEHIND.exec(typed);
  if (behind && RULED.has(unitNamed(behind[2]!)?.name ?? '')) {
    const [, whole, unit, fraction] = behind;
    const meant = `${whole} ${fraction} ${unit}`;
    const found = `${fraction} stands behind ${whole} ${unit} without a unit.`;
    return refuse(place, found, 'The unit stands behind the fraction.', `Write ${meant}.`, inPlace(place, meant));
  }
  const sizes = TWO_SIZES.exec(typed);
  if (sizes) {
    const [, diameter, pitch] = sizes;
    const found = `${typed} is the diameter and the pitch of a propeller: two sizes.`;
    return refuse(
      place,
      found,
      '',
      `Write one of them, such as ${diameter} in; to multiply, write ${diameter} × ${pitch}.`,
    );
  }
  return undefined;
}

/** 35 → 0.35 in³, 049 → 0.049 in³. Two digits are hundredths, a third is thousandths. */
const displacementNumbered = (digits: string): number => Number(`0.${digits}`);

/**
 * Puts points and spaces where a text has commas as decimals and thousands, and takes the stroke of `49-1/4 in` away, all in
 * place, so that every place in the text stays what it is. Commas in parentheses stand between arguments.
 */
export function tidied(text: string): string {
  const plain = joined(text.includes('(') ? text : text.replace(COMMAS, plainNumber));
  const hyphened = HYPHENED.exec(plain);
  if (!hyphened) return plain;
  const [, whole, fraction, unit] = hyphened as unknown as [string, string, string, string];
  return RULED.has(unitNamed(unit)?.name ?? '') && scanUnit(unit) === unit.length
    ? `${whole} ${fraction}${plain.slice(whole.length + 1 + fraction.length)}`
    : plain;
}

/** `2 lb and 10 oz`, `4 ft and 1 in`: the word is left out, since amounts are no conditions. */
function joined(text: string): string {
  const [, amount, unit] = AND_MORE.exec(text) ?? [];
  if (amount === undefined || !CONTINUED.has(unitNamed(unit!)?.name ?? '')) return text;
  return `${amount}    ${text.slice(amount.length + 4)}`;
}

const AND_MORE = /^(\s*[-−–+]?\s*[0-9][0-9.\s/]*([^\s0-9]+)) and(?=\s+[0-9.]+\s*[^\s0-9]+\s*$)/su;
const CONTINUED: ReadonlySet<string> = new Set(['yd', 'ft', 'lb', 'h', 'min', 'm', 'kg']);

const HYPHENED = /^(\s*[-−–+]?\s*[0-9]+)-([0-9]+[/⁄][0-9]+|[¼½¾⅓⅔⅛⅜⅝⅞])\s*(\S.*?)\s*$/s;
const RULED: ReadonlySet<string> = new Set(['in', 'ft', 'oz', 'lb']);
/** Digits with at least one comma among them. */
const COMMAS = /(?<![\p{L}\p{N}_.,])[0-9][0-9.]*,[0-9.,]*[0-9]/gu;

function plainNumber(typed: string, at: number, text: string): string {
  if (/^[0-9]{1,3}(?:,[0-9]{3})+\.[0-9]+$/.test(typed) || /^[0-9]{1,3}(?:,[0-9]{3}){2,}$/.test(typed)) {
    return typed.replaceAll(',', '\u2009');
  }
  if (/^[0-9]{1,3}(?:\.[0-9]{3})+,[0-9]+$/.test(typed)) return typed.replaceAll('.', '\u2009').replace(',', '.');
  if (!/^[0-9]+,[0-9]+$/.test(typed)) return typed;
  if (!/^[1-9][0-9]{0,2},[0-9]{3}$/.test(typed)) return typed.replace(',', '.');
  const rest = /^\s*/.exec(text.slice(at + typed.length))![0];
  const behind = text.slice(at + typed.length + rest.length);
  const unit = behind.slice(0, scanUnit(behind));
  const said = (number: string): string => (unit === '' ? number : `${number}${rest}${unit}`);
  const place = { from: at, to: at + typed.length };
  const [decimal, thousands] = [typed.replace(',', '.'), typed.replace(',', '')];
  return refuse(place, `${said(typed)} can be read in two ways.`, '', `Write ${said(decimal)} or ${said(thousands)}.`);
}

/** Diameter and pitch of a propeller as marked on it, `9x6`, in the unit behind them or in inches. Undefined for anything else. */
export function readPropellerSize(text: string): { readonly diameter: string; readonly pitch: string } | undefined {
  const sizes = /^\s*([0-9][0-9.,]*)\s*(?:in|")?\s*[xX×*]\s*([0-9][0-9.,]*)\s*(.*?)\s*$/.exec(text);
  if (!sizes) return undefined;
  const [, diameter, pitch, behind] = sizes as unknown as [string, string, string, string];
  const unit = unitNamed(behind || 'in')?.name;
  const numbers = [diameter, pitch].map((size) => numberOf(digitsOf(size.replace(',', '.'))));
  if (unit === undefined || !['in', 'mm', 'cm'].includes(unit) || numbers.some((n) => !(n > 0))) return undefined;
  return { diameter: `${numbers[0]} ${unit}`, pitch: `${numbers[1]} ${unit}` };
}
