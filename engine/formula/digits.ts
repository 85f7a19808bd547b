/** Fractions of a ruler that are one character. */
const RULER: Readonly<Record<string, string>> = {
  '¼': '1/4',
  '½': '1/2',
  '¾': '3/4',
  '⅓': '1/3',
  '⅔': '2/3',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};
const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹';

/** The digits of a number in their plain form: `1  3/32`, `1-3/32` and `1 3⁄32` are `1 3/32`, `12 500` is `12500`. */
export function digitsOf(typed: string): string {
  const plain = typed
    .replace(/[¼½¾⅓⅔⅛⅜⅝⅞]/g, (fraction) => ` ${RULER[fraction]}`)
    .replaceAll('⁄', '/')
    .replace(/×10(⁻?)([⁰¹²³⁴⁵⁶⁷⁸⁹]+)/, (_, minus: string, raised: string) => `e${minus && '-'}${lowered(raised)}`)
    .replace(/^([0-9]+)-(?=\s*[0-9]+\/)/, '$1 ')
    .replace('−', '-')
    .replace(/\s+/g, ' ')
    .trim();
  return plain.includes('/') ? plain : plain.replaceAll(' ', '');
}

const lowered = (raised: string): string => [...raised].map((digit) => RAISED.indexOf(digit)).join('');

/** What digits say: `18.3`, `1e-3`, `3/32`, `1 3/32`. */
export function numberOf(digits: string): number {
  const fraction = /^(?:([0-9]+) )?([0-9]+)\/([0-9]+)$/.exec(digits);
  if (!fraction) return Number(digits);
  const [, wholes = '0', above, below] = fraction;
  return Number(wholes) + Number(above) / Number(below);
}
