import { type Expression, partsOf } from './expression';
import { parseFormula } from './parse';

/**
 * Changes a name wherever a formula says it, also as the front of a dotted name (`flight.pull` → `test_flight.pull`), and
 * leaves everything else as typed. A text that can't be read is given back unchanged.
 */
export function renameInFormula(text: string, from: string, to: string): string {
  const parsed = parseFormula(text);
  if (!parsed.ok) return text;
  const places: number[] = [];
  const visit = (e: Expression): void => {
    if (e.kind === 'name' && (e.name === from || e.name.startsWith(`${from}.`))) places.push(e.to - e.name.length);
    for (const part of partsOf(e)) visit(part);
  };
  visit(parsed.expression);
  places.sort((a, b) => b - a);
  return places.reduce((t, at) => t.slice(0, at) + to + t.slice(at + from.length), text);
}
