import { LABEL_SIZE, wrapText } from '../drawing/index';
import { fontFamily, WHITE } from '../theme/tokens';

const SVG = 'http://www.w3.org/2000/svg';
/** Pixels of a millimetre at 96 an inch. */
const PIXELS_PER_MM = 96 / 25.4;
/** Narrower than this, pictures stand one below the other. */
const LEAST_COLUMN = 240;
const GAP = 16;
const MARGIN = 2;
const CAPTION_LINE = LABEL_SIZE + 4;
const LETTER_ROOM = 18;

export interface FigurePage {
  /** Each as drawn for `columnWidth`. */
  readonly pictures: readonly SVGSVGElement[];
  readonly title: string;
  readonly caption: string;
  /** What it shows, for those who don't see it. */
  readonly alt: string;
  readonly width: number;
  /** Colour of its words. */
  readonly ink: string;
}

/** How many stand side by side on a page so many millimetres wide. */
const columnsFor = (widthMm: number, count: number): number =>
  count > 1 && (widthMm * PIXELS_PER_MM - GAP) / 2 >= LEAST_COLUMN ? 2 : 1;

/** Width of each picture on it, px. */
export function columnWidth(widthMm: number, count: number): number {
  const columns = columnsFor(widthMm, count);
  return Math.floor((widthMm * PIXELS_PER_MM - 2 * MARGIN - (columns - 1) * GAP) / columns);
}

/** Pictures of one figure on one page, each with its letter where there are several, and the caption below them. */
export function composeFigure({ pictures, title, caption, alt, width: widthMm, ink }: FigurePage): SVGSVGElement {
  const document = pictures[0]!.ownerDocument;
  const make = (name: string, attributes: Readonly<Record<string, string | number>>, text?: string): Element => {
    const element = document.createElementNS(SVG, name);
    for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, String(value));
    if (text !== undefined) element.textContent = text;
    return element;
  };
  const columns = columnsFor(widthMm, pictures.length);
  const column = columnWidth(widthMm, pictures.length);
  const lettered = pictures.length > 1;
  const body: Element[] = [];
  let top = MARGIN;
  for (let first = 0; first < pictures.length; first += columns) {
    const row = pictures.slice(first, first + columns);
    const heights = row.map((picture, k) => {
      const [x, y] = [MARGIN + k * (column + GAP), top + (lettered ? LETTER_ROOM : 0)];
      const [wide, high] = sizeOf(picture);
      const scale = column / wide;
      if (lettered) {
        const letter = `(${String.fromCharCode(97 + first + k)})`;
        body.push(make('text', { x, y: top + LABEL_SIZE, 'font-weight': 700 }, letter));
      }
      const place = make('g', {
        transform: `translate(${x},${round(y)})${scale === 1 ? '' : ` scale(${round(scale)})`}`,
      });
      for (const name of ['font-size', 'text-anchor']) {
        const value = picture.getAttribute(name);
        if (value !== null) place.setAttribute(name, value);
      }
      place.append(...picture.childNodes);
      body.push(place);
      return (lettered ? LETTER_ROOM : 0) + high * scale;
    });
    top += Math.max(...heights) + GAP / 2;
  }
  const lines =
    caption.trim() === '' ? [] : wrapText(caption.trim(), LABEL_SIZE, columns * column + (columns - 1) * GAP);
  for (const line of lines) {
    top += CAPTION_LINE;
    body.push(make('text', { x: MARGIN, y: round(top) }, line));
  }
  const width = widthMm * PIXELS_PER_MM;
  const height = top + 2 * MARGIN;
  const root = make('svg', {
    xmlns: SVG,
    width: `${round(widthMm)}mm`,
    height: `${round(height / PIXELS_PER_MM)}mm`,
    viewBox: `0 0 ${round(width)} ${round(height)}`,
    role: 'img',
    'font-family': fontFamily,
    'font-size': LABEL_SIZE,
    fill: ink,
  }) as SVGSVGElement;
  root.append(make('title', {}, title), make('desc', {}, alt));
  root.append(make('rect', { width: round(width), height: round(height), fill: WHITE }), ...body);
  return root;
}

/** Width and height of a picture, px. */
function sizeOf(svg: SVGSVGElement): readonly [number, number] {
  const [, , width, height] = (svg.getAttribute('viewBox') ?? '').split(/[ ,]+/).map(Number);
  return [width!, height!];
}

/** Size of a composed figure on paper, mm. */
export const sizeInMm = (svg: SVGSVGElement): readonly [width: number, height: number] => [
  Number.parseFloat(svg.getAttribute('width')!),
  Number.parseFloat(svg.getAttribute('height')!),
];

const round = (v: number): number => Math.round(v * 1000) / 1000;
