import { filledIn, type NoteCell, saidPath } from '../../../engine/index';
import type { Reader } from '../../store/reader';

/** Words of a note as they are printed: paragraphs, with the numbers of the design in the places of its formulas, and no marks. */
export function printedWords(
  { name, text }: Pick<NoteCell, 'name' | 'text'>,
  sheet: Pick<Reader, 'shown' | 'name'>,
): readonly string[] {
  const said = filledIn(text, (formula, k) => sheet.shown(sheet.name(formula) ? formula : saidPath(name, k)));
  return said
    .split(/\n\s*\n/)
    .map((paragraph) =>
      paragraph
        .replace(/\[([^\]]*)\]\([^)]*\)/g, '$1')
        .replace(/^#+\s+/gm, '')
        .replace(/(\*\*|__|\*|`)(\S.*?)\1/g, '$2')
        .replace(/\\([{}*_`#\\])/g, '$1')
        .replace(/\s*\n\s*/g, ' ')
        .trim(),
    )
    .filter((paragraph) => paragraph !== '');
}

/** What goes with the pictures where an editor lays the page: title, words, and which caption belongs to which file. */
export const textFile = (
  title: string,
  words: readonly string[],
  captions: readonly { readonly file: string; readonly caption: string }[],
): string =>
  [title, ...words, ...captions.map(({ file, caption }) => `${file}\n${caption}`)]
    .filter((each) => each !== '')
    .map((each) => `${each}\n`)
    .join('\n');
