import { ExternalTokenizer, type InputStream } from '@lezer/lr';
import { Fraction, MixedNumber, Number as NumberTerm, Unit, UnknownUnit } from './formula.parser.terms';
import { type NumberKind, scanNumber, scanUnit, scanUnknownUnit } from './scan';

/** No literal is longer than this. */
const REACH = 120;

function ahead(input: InputStream): string {
  let text = '';
  for (let i = 0; i < REACH; i++) {
    const code = input.peek(i);
    if (code < 0) break;
    text += String.fromCharCode(code);
  }
  return text;
}

const isNumberStart = (code: number): boolean =>
  code === 46 || (code >= 48 && code <= 57) || '¼½¾⅓⅔⅛⅜⅝⅞'.includes(String.fromCharCode(code));
const terms: Readonly<Record<NumberKind, number>> = { number: NumberTerm, fraction: Fraction, mixed: MixedNumber };

export const numberTokens = new ExternalTokenizer((input) => {
  if (input.next < 0 || !isNumberStart(input.next)) return;
  const number = scanNumber(ahead(input));
  if (number) input.acceptToken(terms[number.kind], number.length);
});

/** Asked only behind a number, where a name can't stand. */
export const unitTokens = new ExternalTokenizer((input) => {
  const text = ahead(input);
  const unit = scanUnit(text);
  if (unit > 0) {
    input.acceptToken(Unit, unit);
    return;
  }
  const unknown = scanUnknownUnit(text);
  if (unknown > 0) input.acceptToken(UnknownUnit, unknown);
});
