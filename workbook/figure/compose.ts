import { LABEL_SIZE, wrapText } from '../drawing/index';
import { CAPTION_LINE, MARGIN, PIXELS_PER_MM, placedPicture, round, sheetOf, svgMaker } from './svg-parts';

/** Narrower than this, pictures stand one below the other. */
const LEAST_COLUMN = 240;
const GAP = 16;
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
  const make = svgMaker(pictures[0]!.ownerDocument);
  const columns = columnsFor(widthMm, pictures.length);
  const column = columnWidth(widthMm, pictures.length);
  const lettered = pictures.length > 1;
  const body: Element[] = [];
  let top = MARGIN;
  for (let first = 0; first < pictures.length; first += columns) {
    const row = pictures.slice(first, first + columns);
    const heights = row.map((picture, k) => {
      const [x, y] = [MARGIN + k * (column + GAP), top + (lettered ? LETTER_ROOM : 0)];
      if (lettered) {
        const letter = `(${String.fromCharCode(97 + first + k)})`;
        body.push(make('text', { x, y: top + LABEL_SIZE, 'font-weight': 700 }, letter));
      }
      const { placed, height } = placedPicture(picture, { x, y, width: column }, make);
      body.push(placed);
      return (lettered ? LETTER_ROOM : 0) + height;
    });
    top += Math.max(...heights) + GAP / 2;
  }
  const lines =
    caption.trim() === '' ? [] : wrapText(caption.trim(), LABEL_SIZE, columns * column + (columns - 1) * GAP);
  for (const line of lines) {
    top += CAPTION_LINE;
    body.push(make('text', { x: MARGIN, y: round(top) }, line));
  }
  return sheetOf({ widthMm, height: top + 2 * MARGIN, title, alt, ink, body }, make);
}

/** Size of a composed figure on paper, mm. */
export const sizeInMm = (svg: SVGSVGElement): readonly [width: number, height: number] => [
  Number.parseFloat(svg.getAttribute('width')!),
  Number.parseFloat(svg.getAttribute('height')!),
];
