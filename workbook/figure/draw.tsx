import { render } from 'preact';
import { SheetContext } from '../store/context';
import { FigureWidth, type OfferedFigure } from '../store/figures';
import type { Sheet } from '../store/sheet';
import { aloneFigure } from './alone';
import { type Look, standing } from './colours';
import { columnWidth, composeFigure, type FigurePage } from './compose';

/** A picture drawn anew so many pixels wide, beside the page; undefined where nothing can be drawn now. */
function drawnAt(figure: OfferedFigure, width: number, sheet: Sheet): SVGSVGElement | undefined {
  const host = document.createElement('div');
  render(
    <SheetContext.Provider value={sheet}>
      <FigureWidth.Provider value={width}>{figure.draw()}</FigureWidth.Provider>
    </SheetContext.Provider>,
    host,
  );
  const svg = host.querySelector<SVGSVGElement>('svg')?.cloneNode(true) as SVGSVGElement | undefined;
  render(null, host);
  return svg;
}

/** A picture drawn anew and made to stand alone, and what it says for those who don't see it; undefined where nothing can be drawn now. */
export function drawnAlone(figure: OfferedFigure, width: number, look: Look, mark: string, sheet: Sheet) {
  const svg = drawnAt(figure, width, sheet);
  return svg && { picture: aloneFigure(svg, look, mark), alt: svg.getAttribute('aria-label') ?? '' };
}

export interface FigureWishes extends Omit<FigurePage, 'pictures' | 'alt' | 'ink'> {
  readonly figures: readonly OfferedFigure[];
  readonly look: Look;
  /** Missing: what the pictures say of themselves. */
  readonly alt?: string | undefined;
}

/** A figure of one or several pictures, and what it says for those who don't see it. */
export function makeFigure({ figures, look, width, title, caption, alt }: FigureWishes, sheet: Sheet) {
  const column = columnWidth(width, figures.length);
  const drawn = figures.flatMap((figure, k) => drawnAlone(figure, column, look, `p${k + 1}-`, sheet) ?? []);
  if (drawn.length === 0) return undefined;
  const said = alt ?? drawn.map((each) => each.alt).join(' ');
  const pictures = drawn.map(({ picture }) => picture);
  return {
    svg: composeFigure({ pictures, title, caption, alt: said, width, ink: standing('currentColor', look) }),
    alt: said,
  };
}
