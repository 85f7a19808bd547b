import { LABEL_SIZE } from '../drawing/index';
import { BLACK, WHITE } from '../theme/tokens';
import { colourName, type Look, seriesOf, standing } from './colours';
import { hatchOf } from './hatches';

/** What serves the page and not the picture. */
const OF_THE_PAGE = /^(?:class|role|tabindex|focusable|pointer-events|style|aria-.*|data-.*|on.*)$/;

/**
 * A picture of the page made to stand alone: a copy with colours instead of names of the theme, and without what only the page
 * has a use for. `mark` is put before its ids, so that several can stand together.
 */
export function aloneFigure(svg: SVGSVGElement, look: Look, mark: string): SVGSVGElement {
  const copy = svg.cloneNode(true) as SVGSVGElement;
  for (const element of [copy, ...copy.querySelectorAll('*')]) {
    if (look === 'black') inBlack(element);
    for (const { name, value } of [...element.attributes]) {
      if (OF_THE_PAGE.test(name)) element.removeAttribute(name);
      else if (name === 'id') element.setAttribute(name, `${mark}${value}`);
      else if (value.includes('url(#')) element.setAttribute(name, value.replaceAll('url(#', `url(#${mark}`));
      else if (LENGTHS.has(name) && value.endsWith('em')) element.setAttribute(name, inPixels(value, element));
      else if (name === 'fill' || name === 'stroke') element.setAttribute(name, standing(value, look));
    }
  }
  if (look === 'black') addHatches(copy, mark);
  return copy;
}

/** Where words stand. */
const LENGTHS: ReadonlySet<string> = new Set(['x', 'y', 'dx', 'dy']);

/** A length in type sizes, which not every reader takes. */
function inPixels(value: string, element: Element): string {
  const size = Number(element.closest('[font-size]')?.getAttribute('font-size') ?? LABEL_SIZE);
  return String(Math.round(Number.parseFloat(value) * size * 100) / 100);
}

/** Lines of the grid in black alone: so thin and so widely dotted that they stay behind. */
const GRID = { 'stroke-width': '0.4', 'stroke-dasharray': '0.5 3' } as const;

/** What can't be said by colour is said by hatches and dots. */
function inBlack(element: Element): void {
  for (const name of ['opacity', 'fill-opacity', 'stroke-opacity']) element.removeAttribute(name);
  const [fill, stroke] = [element.getAttribute('fill') ?? '', element.getAttribute('stroke') ?? ''];
  if (colourName(stroke) === 'hairline')
    for (const [name, value] of Object.entries(GRID)) element.setAttribute(name, value);
  if (colourName(fill) === 'hairline') element.setAttribute('fill', WHITE);
  const n = seriesOf(fill);
  const tag = element.tagName.toLowerCase();
  if (n === undefined || tag === 'text' || tag === 'tspan') return;
  // The mark is put before all ids later.
  if (isSign(element)) element.setAttribute('fill', n === 0 ? WHITE : BLACK);
  else element.setAttribute('fill', tag === 'circle' ? BLACK : `url(#hatch${n})`);
}

/** Signs of designs are told apart by their outline: they are too small for a hatch. */
const isSign = (element: Element): boolean =>
  element.hasAttribute('data-cloud') ||
  (element.tagName.toLowerCase() === 'path' && /Z.*Z|^M[^Z]{0,200}Z$/.test(element.getAttribute('d') ?? ''));

function addHatches(svg: SVGSVGElement, mark: string): void {
  const used = new Set(
    [...svg.querySelectorAll('*')].flatMap((each) => /hatch(\d)\)$/.exec(each.getAttribute('fill') ?? '')?.[1] ?? []),
  );
  for (const n of [...used].sort()) svg.prepend(hatchOf(Number(n), `${mark}hatch${n}`, svg.ownerDocument));
}
