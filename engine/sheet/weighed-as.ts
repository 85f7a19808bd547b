import { inSentence, listed } from './called';
import { cutFrom, isMadeOf } from './cells/cut-from';
import type { Document, Part, PartsCell } from './document';
import { textAt } from './paths';
import { cellsOf, withPiece } from './sheets';
import type { Change } from './transaction';

/** What a part is made of as the design stands: the option that its choice picks, else what it names; undefined where neither is said. */
function madeOfNow(document: Document, part: Part): string | undefined {
  const stuff = cutFrom(part);
  const choice = cellsOf(document).find(({ kind, name }) => kind === 'choice' && name === stuff);
  if (stuff === undefined || choice?.kind !== 'choice') return stuff;
  const picked = choice.text.trim();
  return choice.options.some(({ name }) => name === picked) ? picked : undefined;
}

const isWeighed = ({ fields }: Part): boolean => (fields.weighed ?? '').trim() !== '';

/** It was made of something else when it was weighed: it counts by its estimate, as it would be re-made. */
export function isRemade(document: Document, part: Part): boolean {
  const { weighed_as: then } = part;
  const now = madeOfNow(document, part);
  return isWeighed(part) && then !== undefined && now !== undefined && !isMadeOf(now, then);
}

/** What a part was made of when it was weighed, by its title; '' where nothing is known. */
export function weighedAsTitle(document: Document, part: Part): string {
  const { weighed_as: then = '' } = part;
  const choice = cellsOf(document).find(({ kind, name }) => kind === 'choice' && name === cutFrom(part));
  const option = choice?.kind === 'choice' ? choice.options.find(({ name }) => name === then) : undefined;
  return option?.title ?? then.replaceAll('_', ' ');
}

/** What a trade of these choices makes of parts that are weighed: a sentence for all that were weighed as one option. */
export function remadeSentences(document: Document, choices: readonly string[]): readonly string[] {
  return cellsOf(document).flatMap((cell) => {
    if (cell.kind !== 'choice' || !choices.includes(cell.name)) return [];
    const weighed = tablesOf(document)
      .flatMap(({ rows }) => rows)
      .filter((part) => isWeighed(part) && part.weighed_as !== undefined && cutFrom(part) === cell.name);
    return [...new Set(weighed.map((part) => part.weighed_as!))].map((then) => {
      const parts = weighed.filter((part) => part.weighed_as === then);
      const titles = listed(parts.map(({ title, name }, k) => (k === 0 ? title || name : inSentence(title || name))));
      const made = weighedAsTitle(document, parts[0]!);
      const [are, count, their] = parts.length === 1 ? ['is', 'it counts', 'its'] : ['are', 'they count', 'their'];
      return `${titles} ${are} weighed as made of “${made}”: with another ${count} as re-made, by ${their} estimate.`;
    });
  });
}

const tablesOf = (document: Document): readonly PartsCell[] =>
  cellsOf(document).filter((cell): cell is PartsCell => cell.kind === 'parts');

const asMadeNow = (document: Document, part: Part): Part => {
  const { weighed_as: _, ...rest } = part;
  const now = isWeighed(part) ? madeOfNow(document, part) : undefined;
  return now === undefined ? rest : { ...rest, weighed_as: now };
};

/** The edits that put what the scale says into a part, with what it is made of; undefined where the path is no weighed mass of a part. */
export function weighingPart(document: Document, path: string, text: string): readonly Change[] | undefined {
  for (const cell of tablesOf(document)) {
    const part = cell.rows.find(({ name }) => path === `${cell.name}.${name}.weighed`);
    if (!part) continue;
    const now = asMadeNow(document, { ...part, fields: { ...part.fields, weighed: text } });
    const rows = cell.rows.map((row) => (row === part ? { ...now, fields: part.fields } : row));
    const made: Change[] = now.weighed_as === part.weighed_as ? [] : [{ change: 'cell', cell: { ...cell, rows } }];
    return [...made, { change: 'text', path, text }, ...listing(document, cell.name, part, text)];
  }
  return undefined;
}

/** The lists of what came on the scale with a part as the last, or without it. */
function listing(document: Document, table: string, part: Part, text: string): readonly Change[] {
  const path = `${table}.${part.name}`;
  return cellsOf(document).flatMap((cell): Change[] => {
    if (cell.kind !== 'weighing' || cell.parts !== table) return [];
    const others = cell.order.filter((each) => each !== path);
    const order = text.trim() === '' ? others : [...others, path];
    const same = order.length === cell.order.length && order.every((each, k) => each === cell.order[k]);
    return same ? [] : [{ change: 'cell', cell: { ...cell, order } }];
  });
}

/** The document with what these parts are made of now, once their weighed masses (paths) are typed. */
export function madeAsTyped(document: Document, paths: readonly string[]): Document {
  return paths.reduce((now, path) => {
    const [change] = weighingPart(now, path, textAt(now, path) ?? '') ?? [];
    return change?.change === 'cell' ? withPiece(now, change.cell) : now;
  }, document);
}

/** A file from before this was kept: what is weighed in it is taken as made of what it is made of now. */
export function withWeighedAs(document: Document): Document {
  let same = true;
  const sheets = document.sheets.map((sheet) => ({
    ...sheet,
    pieces: sheet.pieces.map((piece) => {
      if (piece.kind !== 'parts') return piece;
      const rows = piece.rows.map((row) => (row.weighed_as === undefined ? asMadeNow(document, row) : row));
      if (rows.every((row, k) => row.weighed_as === piece.rows[k]!.weighed_as)) return piece;
      same = false;
      return { ...piece, rows };
    }),
  }));
  return same ? document : { ...document, sheets };
}
