import MiniSearch from 'minisearch';
import type { Chapter, Piece } from '../../engine/index';
import { idOf } from './places';

/** Something of the reference that was looked for. */
export interface Found {
  /** Where a link to it leads. */
  readonly id: string;
  readonly title: string;
  /** Title of its chapter. */
  readonly chapter: string;
  /** The beginning of what it says. */
  readonly says: string;
}

interface Entry extends Found {
  readonly key: number;
  /** As formulas say it; '' where they can't. */
  readonly name: string;
  /** All words of it. */
  readonly text: string;
  /** A row of a table says less than an entry of its own. */
  readonly row?: true;
}

const MOST = 40;
const SHORT = 90;
const ROW_WEIGHT = 0.3;

/** Looks words up in titles, names and texts; the beginning of a word does, and a slip of one letter. */
export function searchOf(chapters: readonly Chapter[]): (words: string) => readonly Found[] {
  const entries = chapters.flatMap(entriesOf).map((entry, key) => ({ ...entry, key }));
  const index = new MiniSearch<Entry>({
    idField: 'key',
    fields: ['title', 'name', 'chapter', 'text'],
    tokenize: wordsOf,
  });
  index.addAll(entries);
  return (words) => {
    const found = index.search(words, {
      combineWith: 'AND',
      prefix: true,
      fuzzy: (word) => (word.length > 4 ? 1 : false),
      boost: { title: 6, name: 3, chapter: 2 },
      boostDocument: (key) => (entries[key as number]!.row ? ROW_WEIGHT : 1),
    });
    const whole = words.trim().toLowerCase();
    const said = ({ title, name }: Entry): boolean =>
      title.replaceAll('\u00a0', ' ').toLowerCase() === whole || name === whole;
    const listed = found.map(({ id: key }) => entries[key as number]!);
    return [...listed.filter(said), ...listed.filter((entry) => !said(entry))].slice(0, MOST);
  };
}

/** Letters and digits; what stands between joins nothing, as in "pull_per_weight". */
const wordsOf = (text: string): string[] => text.match(/[\p{L}\p{M}\p{N}]+/gu) ?? [];

/** A chapter itself, and each of its entries, equations and tables by itself; what has no place of its own leads to what stands before it. */
function entriesOf({ id, title: chapter, pieces }: Chapter): Omit<Entry, 'key'>[] {
  const words = pieces.filter(({ kind }) => kind === 'text' || kind === 'list').map(textOf);
  const all: Omit<Entry, 'key'>[] = [
    { id, title: chapter, name: '', chapter, says: short(words[0] ?? ''), text: words.join(' ') },
  ];
  let place = id;
  for (const piece of pieces) {
    place = idOf(piece) ?? place;
    if (piece.kind === 'entry' || piece.kind === 'equation') {
      const name = piece.kind === 'entry' ? piece.name : '';
      all.push({ id: place, title: piece.title, name, chapter, says: short(piece.doc), text: textOf(piece) });
    }
    // The list of all names says again what the chapters of the blocks say.
    if (piece.kind === 'table' && id !== 'names') {
      for (const row of piece.rows) {
        // Told by its meaning where there is one: "wing.span" says less than "Span".
        const title = row[piece.columns.indexOf('meaning')] || row[piece.columns.indexOf('title')] || row[0] || '';
        const says = short(row.filter((cell) => cell !== title && cell !== '').join(', '));
        all.push({ id: place, title, name: '', chapter, says, text: row.join(' '), row: true });
      }
    }
  }
  return all;
}

const short = (text: string): string =>
  text.length <= SHORT ? text : `${text.slice(0, text.lastIndexOf(' ', SHORT))} …`;

function textOf(piece: Piece): string {
  switch (piece.kind) {
    case 'text':
    case 'heading':
      return piece.text;
    case 'list':
      return piece.items.join(' ');
    case 'equation':
      return [piece.title, ...piece.lines, piece.doc, piece.source].join(' ');
    case 'entry':
      return [piece.title, piece.symbol, piece.name, piece.doc, ...piece.facts, ...piece.notes].join(' ');
    case 'table':
      return piece.title;
  }
}
