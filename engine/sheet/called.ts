import type { NameInfo } from '../terms/index';
import type { Cell, Document } from './document';
import { cellsOf } from './sheets';

/** What a person calls a place of the design, in the middle of a sentence; its path only where nothing there has a title. */
export type Called = (path: string) => string;

/** What has titles: a document and the names that it gives. */
export interface Titled {
  readonly document: Document;
  readonly names: readonly NameInfo[];
}

const known = new WeakMap<Titled['names'], Called>();

export function calledIn({ document, names }: Titled): Called {
  let called = known.get(names);
  if (!called) {
    const infos = new Map(names.map((info) => [info.path, info]));
    const cells = cellsOf(document);
    const byId = new Map(cells.map((cell) => [cell.id, cell]));
    const byName = new Map(cells.map((cell) => [cell.name, cell]));
    called = (path) => {
      const info = infos.get(path);
      const cell = byId.get(info?.cell ?? '') ?? byName.get(path.split('.')[0]!);
      return calledAt(cell, path, info?.title) || path;
    };
    known.set(names, called);
  }
  return called;
}

/** A variable goes by its own title, a line by the name that it is given; a field, a result or a part also says of what it is. */
function calledAt(cell: Cell | undefined, path: string, title = ''): string {
  if (cell && path === cell.name) return cell.title || cell.name;
  const row = cell && rowsOf(cell).find((each) => path === `${cell.name}.${each.name}`);
  if (row) return row.title;
  if (title === '') return '';
  if (cell?.kind === 'note') return `a formula in ${cell.title || cell.name}`;
  // "Fin: thickness" is the thickness of the fin.
  const [of, what] = title.split(': ');
  if (what !== undefined) return `${theOf(what)} of ${of}`;
  if (!cell) return inSentence(title);
  if (cell.kind === 'formula' || cell.kind === 'check') return title;
  if (cell.kind === 'variables') return theOf(title);
  const words = title.includes(', ') ? `“${inSentence(title)}”` : theOf(title);
  return `${words} of ${cell.title || cell.name}`;
}

const rowsOf = (cell: Cell): readonly { readonly name: string; readonly title: string }[] =>
  cell.kind === 'parts' ? cell.rows : cell.kind === 'choice' ? cell.options : [];

/** "Mean chord" → "the mean chord", "CG station" → "the CG station". */
const theOf = (title: string): string => `the ${inSentence(title)}`;

/** "a, b and c". */
export function listed(items: readonly string[]): string {
  return items.length < 2 ? (items[0] ?? '') : `${items.slice(0, -1).join(', ')} and ${items.at(-1)}`;
}

/** A title in the middle of a sentence: "CG" keeps its capitals, "Lap time" does not. */
export const inSentence = (title: string): string =>
  /^\p{Lu}\p{Ll}/u.test(title) ? title[0]!.toLowerCase() + title.slice(1) : title;

/** A title at the beginning of a line: "tip weight" → "Tip weight". */
export const capital = (title: string): string => title.replace(/^\p{Ll}/u, (letter) => letter.toUpperCase());

/** At the beginning of a sentence; a title or a name stays as it is written. */
export const atBeginning = (words: string): string => words.replace(/^(the|a) /, capital);

/** "Balance waits", "Lines wait", "the length of Lines waits", "a formula in What the wind does waits". */
export const waits = (words: string): string =>
  /[^s]s$/.test(words) && !/ of |^a formula in /.test(words) ? 'wait' : 'waits';
