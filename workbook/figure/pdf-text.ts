import { LABEL_SIZE, textWidth } from '../drawing/index';
import { WHITE } from '../theme/tokens';

const SVG = 'http://www.w3.org/2000/svg';
/** Share of the type size that stands above the line. */
const ABOVE = 0.82;

/**
 * Words that stand over lines have paper around them by a wide stroke below their letters, which a PDF can't say: they get a
 * piece of paper below them in its place.
 */
export function paperUnderWords(svg: SVGSVGElement): void {
  for (const text of [...svg.querySelectorAll('text[paint-order="stroke"]')]) {
    const lines = text.querySelector('tspan') ? [...text.querySelectorAll('tspan')] : [text];
    const size = Number(nearest(text, 'font-size') ?? LABEL_SIZE);
    const anchor = nearest(text, 'text-anchor') ?? 'start';
    for (const line of lines) {
      const width = textWidth(line.textContent ?? '', size);
      const x = Number(line.getAttribute('x') ?? 0);
      const left = anchor === 'middle' ? x - width / 2 : anchor === 'end' ? x - width : x;
      const paper = svg.ownerDocument.createElementNS(SVG, 'rect');
      const at = { x: left - 1, y: Number(line.getAttribute('y') ?? 0) - ABOVE * size, width: width + 2, height: size };
      for (const [name, value] of Object.entries(at)) paper.setAttribute(name, String(Math.round(value * 100) / 100));
      paper.setAttribute('fill', WHITE);
      const turn = text.getAttribute('transform');
      if (turn !== null) paper.setAttribute('transform', turn);
      text.before(paper);
    }
    for (const name of ['stroke', 'stroke-width', 'stroke-linejoin', 'paint-order']) text.removeAttribute(name);
  }
}

function nearest(element: Element, attribute: string): string | undefined {
  for (let at: Element | null = element; at; at = at.parentElement) {
    const value = at.getAttribute(attribute);
    if (value !== null) return value;
  }
  return undefined;
}

/** Letters that the typeface lacks are put into a span of the one that has them. */
export function spansOfSigns(svg: SVGSVGElement, has: (letter: string) => boolean, family: string): void {
  const { ownerDocument: document } = svg;
  for (const element of [...svg.querySelectorAll('text, tspan')]) {
    for (const node of [...element.childNodes]) {
      if (node.nodeType !== 3) continue;
      const runs = runsOf(node.textContent ?? '', has);
      if (runs.every((run) => run.has)) continue;
      const parts = runs.map((run) => {
        const span = document.createElementNS(SVG, 'tspan');
        if (!run.has) span.setAttribute('font-family', family);
        if (!run.has) span.setAttribute('font-weight', '400');
        span.textContent = run.text;
        return span;
      });
      node.replaceWith(...parts);
    }
  }
}

function runsOf(text: string, has: (letter: string) => boolean): { has: boolean; text: string }[] {
  const runs: { has: boolean; text: string }[] = [];
  for (const letter of text) {
    const known = has(letter);
    const last = runs.at(-1);
    if (last?.has === known) last.text += letter;
    else runs.push({ has: known, text: letter });
  }
  return runs;
}
