import { type FormulaFault, fault } from './fault';

/** Signs that are written elsewhere, and what to write here. The longer stands before the shorter. */
const FOREIGN: readonly (readonly [sign: string, mend: string])[] = [
  ['==', 'Write = to compare.'],
  ['=>', 'Write ≥ or >=.'],
  ['=<', 'Write ≤ or <=.'],
  ['<>', 'Write ≠ or !=.'],
  ['**', 'Write ^ for a power.'],
  ['&&', 'Write and.'],
  ['||', 'Write or.'],
  ['&', 'Write and.'],
  ['|', 'Write or between conditions, abs( ) for a number without its sign.'],
  ['!', 'Write not.'],
  ['√', 'Write sqrt( ).'],
  ['·', 'Write × or * to multiply.'],
  [';', 'Write a comma between the arguments of a function.'],
];
/** Marks of inches and feet, which belong behind a number. */
const MARKS: ReadonlySet<string> = new Set(['"', '″', '”', '“', "'", '′', '’', '‘']);

/** A sign of another notation where the reader stopped, which may be behind its first character. */
export function foreignFault(text: string, from: number): FormulaFault | undefined {
  if (text[from] === '=' && text.slice(0, from).trim() === '') {
    const mend = 'Leave it out: a formula begins with its first value.';
    return fault({ from, to: from + 1 }, '= stands in front of the formula.', '', mend);
  }
  if (MARKS.has(text[from]!)) {
    const mend = 'Write names without quotation marks, and " or \' only behind the number of inches or feet.';
    return fault({ from, to: from + 1 }, `${text[from]} is not a sign of a formula.`, '', mend);
  }
  for (const [sign, mend] of FOREIGN) {
    const start = [from, from + 1 - sign.length].find((at) => text.startsWith(sign, at));
    if (start === undefined) continue;
    return fault({ from: start, to: start + sign.length }, `${sign} is not a sign of a formula.`, '', mend);
  }
  return undefined;
}
