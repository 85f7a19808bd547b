/**
 * Advance widths of B612, in em, measured from the typeface itself. The regular and the bold cut share them, so a label
 * can be placed before it is in the page, and the same in a test as on the screen.
 */
const ADVANCES: readonly (readonly [em: number, characters: string])[] = [
  [0.2, "'|"],
  [0.25, ',;·'],
  [0.3, '.:Iij°²³'],
  [0.35, ' \u00a0!l'],
  [0.4, '"frt'],
  [0.45, '()-J[s'],
  [0.5, '=]cz'],
  [0.525, 'a'],
  [0.55, '$*/?FLS\\_`ekvxy−–÷é'],
  [0.65, '0123456789<>ABDGRVX{µ'],
  [0.7, '&HU'],
  [0.75, 'N^w~½'],
  [0.8, 'OQ×'],
  [0.85, '#≥≤→'],
  [0.9, '%Mm'],
  [0.95, 'W'],
  [1, '@'],
];
const OTHER = 0.6;

const advance = new Map<string, number>();
for (const [em, characters] of ADVANCES) for (const c of characters) advance.set(c, em);

/** Width of a line of text in the same unit as `size`, the type size. */
export function textWidth(text: string, size: number): number {
  let em = 0;
  for (const c of text) em += advance.get(c) ?? OTHER;
  return em * size;
}

/** Breaks a text into lines not wider than `width` where its words allow; a figure keeps its unit. */
export function wrapText(text: string, size: number, width: number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/(?<!\d) /)) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && textWidth(longer, size) > width) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  lines.push(line);
  return lines;
}
