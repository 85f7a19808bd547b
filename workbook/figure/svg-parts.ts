import { LABEL_SIZE } from '../drawing/index';
import { fontFamily, WHITE } from '../theme/tokens';

const SVG = 'http://www.w3.org/2000/svg';
/** Pixels of a millimetre at 96 an inch. */
export const PIXELS_PER_MM = 96 / 25.4;
export const MARGIN = 2;
export const CAPTION_LINE = LABEL_SIZE + 4;

type Make = (name: string, attributes: Readonly<Record<string, string | number>>, text?: string) => Element;

/** Makes elements of a drawing. */
export const svgMaker =
  (document: Document): Make =>
  (name, attributes, text) => {
    const element = document.createElementNS(SVG, name);
    for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, String(value));
    if (text !== undefined) element.textContent = text;
    return element;
  };

/** A picture at its place, as wide as is said, and how high it is then. Its parts are taken out of it. */
export function placedPicture(
  picture: SVGSVGElement,
  { x, y, width }: { readonly x: number; readonly y: number; readonly width: number },
  make: Make,
): { readonly placed: Element; readonly height: number } {
  const [wide, high] = sizeOf(picture);
  const scale = width / wide;
  const placed = make('g', {
    transform: `translate(${x},${round(y)})${scale === 1 ? '' : ` scale(${round(scale)})`}`,
  });
  for (const name of ['font-size', 'text-anchor']) {
    const value = picture.getAttribute(name);
    if (value !== null) placed.setAttribute(name, value);
  }
  placed.append(...picture.childNodes);
  return { placed, height: high * scale };
}

interface PaperSheet {
  readonly widthMm: number;
  /** Pixels. */
  readonly height: number;
  readonly title: string;
  readonly alt: string;
  readonly ink: string;
  readonly body: readonly Element[];
}

/** White paper of the size that it has in print, with what stands on it. */
export function sheetOf({ widthMm, height, title, alt, ink, body }: PaperSheet, make: Make): SVGSVGElement {
  const width = widthMm * PIXELS_PER_MM;
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

export const round = (v: number): number => Math.round(v * 1000) / 1000;
