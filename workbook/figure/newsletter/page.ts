import { LABEL_SIZE, wrapText } from '../../drawing/index';
import { CAPTION_LINE, MARGIN, PIXELS_PER_MM, placedPicture, sheetOf, svgMaker } from '../svg-parts';

/** A picture with the words under it. */
interface CaptionedPicture {
  /** As drawn for `figureWidth`. */
  readonly picture: SVGSVGElement;
  readonly caption: string;
}
export interface NewsletterPage {
  readonly title: string;
  /** Paragraphs, with the numbers in their places. */
  readonly words: readonly string[];
  /** At least one. */
  readonly figures: readonly CaptionedPicture[];
  readonly widthMm: number;
  readonly ink: string;
  readonly alt: string;
}

const GAP = 16;
const TITLE_SIZE = LABEL_SIZE + 4;
const LINE = LABEL_SIZE + 5;
/** A column of a newsletter is no narrower, px. */
const LEAST_COLUMN = 240;

const columnsFor = (widthMm: number): number =>
  (widthMm * PIXELS_PER_MM - 2 * MARGIN - GAP) / 2 >= LEAST_COLUMN ? 2 : 1;

/** Width of each column, px: one on a page of 85 mm, two on one of 175 mm. */
export function figureWidth(widthMm: number): number {
  const columns = columnsFor(widthMm);
  return Math.floor((widthMm * PIXELS_PER_MM - 2 * MARGIN - (columns - 1) * GAP) / columns);
}

/** Width on paper of a picture of one column, mm. */
export const mmOf = (pixels: number): number => (pixels + 2 * MARGIN) / PIXELS_PER_MM;

/** Title and words first, then the pictures, each with its caption: one below the other, or side by side where there is room. */
export function newsletterPage({ title, words, figures, widthMm, ink, alt }: NewsletterPage): SVGSVGElement {
  const make = svgMaker(figures[0]!.picture.ownerDocument);
  const columns = columnsFor(widthMm);
  const column = figureWidth(widthMm);
  const whole = columns * column + (columns - 1) * GAP;
  const body: Element[] = [];
  let top = MARGIN;
  const write = (lines: readonly string[], x: number, from: number, line: number, more = {}): number => {
    for (const [k, text] of lines.entries()) body.push(make('text', { x, y: from + (k + 1) * line, ...more }, text));
    return from + lines.length * line;
  };
  const head = title.trim() === '' ? [] : wrapText(title.trim(), TITLE_SIZE, whole);
  top = write(head, MARGIN, top, TITLE_SIZE + 4, { 'font-size': TITLE_SIZE, 'font-weight': 700 });
  for (const paragraph of words) {
    top = write(wrapText(paragraph, LABEL_SIZE, whole), MARGIN, top + (top > MARGIN ? LABEL_SIZE / 2 : 0), LINE);
  }
  if (top > MARGIN) top += GAP;
  for (let first = 0; first < figures.length; first += columns) {
    const bottoms = figures.slice(first, first + columns).map(({ picture, caption }, k) => {
      const x = MARGIN + k * (column + GAP);
      const { placed, height } = placedPicture(picture, { x, y: top, width: column }, make);
      body.push(placed);
      return write(wrapText(caption, LABEL_SIZE, column), x, top + height + 2, CAPTION_LINE);
    });
    top = Math.max(...bottoms) + GAP;
  }
  return sheetOf({ widthMm, height: top, title, alt, ink, body }, make);
}
