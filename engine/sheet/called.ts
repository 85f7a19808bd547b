import type { Compiled } from './compile';
import type { Cell } from './document';
import { cellsOf } from './sheets';

/** What a person calls a place of the design, in the middle of a sentence; its path only where nothing there has a title. */
export type Called = (cell: string, path: string) => string;

const known = new WeakMap<Compiled['names'], Called>();

export function calledIn({ document, names }: Compiled): Called {
  let called = known.get(names);
  if (!called) {
    const titles = new Map(names.map((info) => [info.path, info.title]));
    const cells = new Map(cellsOf(document).map((cell) => [cell.id, cell]));
    called = (id, path) => calledAt(cells.get(id), path, titles.get(path)) || path;
    known.set(names, called);
  }
  return called;
}

/** A variable goes by its own title, a line by the name that it is given; a field, a result or a part also says of what it is. */
function calledAt(cell: Cell | undefined, path: string, title = ''): string {
  if (!cell) return title;
  if (path === cell.name) return cell.title || cell.name;
  if (cell.kind === 'formula') return title;
  const row = rowsOf(cell).find((each) => path === `${cell.name}.${each.name}`);
  if (row) return row.title;
  if (title === '') return '';
  return cell.kind === 'variables' ? theOf(title) : `${theOf(title)} of ${cell.title || cell.name}`;
}

const rowsOf = (cell: Cell): readonly { readonly name: string; readonly title: string }[] =>
  cell.kind === 'parts' ? cell.rows : cell.kind === 'choice' ? cell.options : [];

/** "Mean chord" → "the mean chord", "CG station" → "the CG station". */
const theOf = (title: string): string => `the ${inSentence(title)}`;

/** A title in the middle of a sentence: "CG" keeps its capitals, "Lap time" does not. */
export const inSentence = (title: string): string =>
  /^\p{Lu}\p{Ll}/u.test(title) ? title[0]!.toLowerCase() + title.slice(1) : title;

/** A title at the beginning of a line: "tip weight" → "Tip weight". */
export const capital = (title: string): string => title.replace(/^\p{Ll}/u, (letter) => letter.toUpperCase());

/** At the beginning of a sentence; a title or a name stays as it is written. */
export const atBeginning = (words: string): string => words.replace(/^the /, 'The ');
