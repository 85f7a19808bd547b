import { type Expression, type Name, partsOf } from './expression';
import { parseFormula } from './parse';

/**
 * Changes a name wherever a formula says it, also as the front of a dotted name (`flight.pull` → `test_flight.pull`), and
 * leaves everything else as typed. A text that can't be read is given back unchanged.
 */
export function renameInFormula(text: string, from: string, to: string): string {
  const parsed = parseFormula(text);
  if (!parsed.ok) return text;
  const names = namesOf(parsed.expression);
  const isMeant = ({ name }: Name): boolean => name === from || name.startsWith(`${from}.`);
  const places = names.filter(isMeant).map((name) => name.to - name.name.length);
  const renamed = replaceAt(text, places, from.length, to);
  // `3 m/span` with span called s would become a speed: a space keeps the unit and the name apart.
  return saysAsManyNames(renamed, names.length) ? renamed : replaceAt(text, places, from.length, ` ${to}`);
}

function replaceAt(text: string, places: readonly number[], length: number, by: string): string {
  const fromTheEnd = [...places].sort((a, b) => b - a);
  return fromTheEnd.reduce((changed, at) => changed.slice(0, at) + by + changed.slice(at + length), text);
}

/** The names in an expression, in the order in which they stand. */
export function namesOf(e: Expression): Name[] {
  return e.kind === 'name' ? [e] : partsOf(e).flatMap(namesOf);
}

function saysAsManyNames(text: string, count: number): boolean {
  const parsed = parseFormula(text);
  return parsed.ok && namesOf(parsed.expression).length === count;
}
