import type { Document } from '../../../engine/index';
import { styleString } from '../../theme/style-string';

/** What the title block of one sheet says on paper. */
export interface PaperTitle {
  readonly head: Pick<Document, 'title' | 'drawn' | 'date' | 'class' | 'units' | 'invented'>;
  /** "2 of 6: Model". */
  readonly sheet: string;
  /** The drawing on this sheet is 1 : so much; undefined where it has none. */
  readonly denominator: number | undefined;
}

const line = (label: string, text: string): string => styleString(`${label}: ${text || '–'}`);
const box = (place: string, lines: readonly string[]): string =>
  `@bottom-${place} { content: ${lines.join(' "\\a " ')}; }`;

/** Number of the page of weights, which belongs to no sheet. */
export const WEIGHTS_PAGE = 0;

/** The name by which a sheet asks for its pages. */
export const pageName = (number: number): string => `sheet-${number}`;

/** Title block after ISO 7200 at the foot of every page of a sheet, as a rule of a style sheet. */
export function titleRule(number: number, { head, sheet, denominator }: PaperTitle): string {
  const units = head.units === 'inch_pound' ? 'inch and pound' : 'metric';
  const boxes = [
    box('left', [
      line('drawn with', 'Tetherwright'),
      line('units', units),
      line('scale', denominator === undefined ? 'no drawing' : `1 : ${denominator}`),
      line('date', head.date),
    ]),
    box('center', [
      line('design', head.title),
      ...(head.invented ? [styleString('Invented: no such model, maker or club exists.')] : []),
      line('class', head.class ?? ''),
      line('drawn', head.drawn),
    ]),
    box('right', [line('sheet', sheet), `"page " counter(page) " of " counter(pages)`]),
  ];
  return `@page ${pageName(number)} { ${boxes.join(' ')} }`;
}
