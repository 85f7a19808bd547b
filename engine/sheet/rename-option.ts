import { type Expression, parseFormula, partsOf } from '../formula/index';

/** Changes the name of an option where a formula compares its choice with it: `tail = balsa ? 1 : 2`. Else the text itself. */
export function renameOption(text: string, choice: string, from: string, to: string): string {
  const parsed = parseFormula(text);
  if (!parsed.ok) return text;
  const places: number[] = [];
  const visit = (e: Expression): void => {
    if (e.kind === 'comparison') {
      for (const [one, other] of [[e.left, e.right] as const, [e.right, e.left] as const]) {
        const compared = one.kind === 'name' && one.name === choice;
        if (compared && other.kind === 'name' && other.name === from) places.push(other.to - from.length);
      }
    }
    for (const part of partsOf(e)) visit(part);
  };
  visit(parsed.expression);
  places.sort((a, b) => b - a);
  return places.reduce((t, at) => t.slice(0, at) + to + t.slice(at + from.length), text);
}
