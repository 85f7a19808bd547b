/** A stretch of a formula: on the line, lowered or raised. */
export interface Stretch {
  readonly level: 'line' | 'index' | 'power';
  readonly text: string;
}

/** An index: letters and digits, and a comma only where the index goes on behind it. */
const INDEX = /_((?:[\p{L}\p{M}\p{N}½¼]|,(?=\p{L}))+)/uy;
/** A power without parentheses. */
const POWER = /\^([\p{L}\p{M}\p{N}.−½¾¼]+)/uy;

/** Splits plain mathematics, "P_0^1.5", into what stands on the line, what is lowered and what is raised. */
export function stretchesOf(text: string): Stretch[] {
  const stretches: Stretch[] = [];
  const put = (level: Stretch['level'], piece: string): void => {
    const last = stretches.at(-1);
    if (last?.level === level) stretches[stretches.length - 1] = { level, text: last.text + piece };
    else stretches.push({ level, text: piece });
  };
  let at = 0;
  while (at < text.length) {
    const end = text[at] === '^' && text[at + 1] === '(' ? closing(text, at + 1) : -1;
    if (end > 0) {
      put('power', text.slice(at + 2, end));
      at = end + 1;
      continue;
    }
    const index = matchAt(INDEX, text, at);
    const power = index ? undefined : matchAt(POWER, text, at);
    const found = index ?? power;
    if (found) {
      put(index ? 'index' : 'power', found[1]!);
      at += found[0].length;
    } else {
      put('line', text[at]!);
      at += 1;
    }
  }
  return stretches;
}

function matchAt(pattern: RegExp, text: string, at: number): RegExpExecArray | undefined {
  pattern.lastIndex = at;
  return pattern.exec(text) ?? undefined;
}

/** Place of the parenthesis that closes the one at `open`; −1 where none does. */
function closing(text: string, open: number): number {
  let depth = 0;
  for (let at = open; at < text.length; at++) {
    if (text[at] === '(') depth += 1;
    if (text[at] === ')') depth -= 1;
    if (depth === 0) return at;
  }
  return -1;
}
