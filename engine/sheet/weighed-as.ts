import { writeQuantity } from '../units/index';
import { inSentence, listed } from './called';
import { cutFrom, isMadeOf } from './cells/cut-from';
import { partFields } from './cells/part-fields';
import type { Document, Part, PartsCell } from './document';
import { textAt } from './paths';
import { cellsOf, withPiece } from './sheets';
import type { Change } from './transaction';
import { tradedSizes } from './weighed-sizes';

/** What a part is made of as the design stands: the option that its choice picks, else what it names; undefined where neither is said. */
function madeOfNow(document: Document, part: Part): string | undefined {
  const stuff = cutFrom(part);
  const choice = cellsOf(document).find(({ kind, name }) => kind === 'choice' && name === stuff);
  if (stuff === undefined || choice?.kind !== 'choice') return stuff;
  const picked = choice.text.trim();
  return choice.options.some(({ name }) => name === picked) ? picked : undefined;
}

const isWeighed = ({ fields }: Part): boolean => (fields.weighed ?? '').trim() !== '';

/** Reads a number of the design, SI; NaN where it has none. */
export type ReadNumber = (path: string) => number;

/**
 * It was made of something else when it was weighed, or of that in another thickness or with another finish: it counts by its estimate,
 * as it would be re-made, and the scale has no difference from that.
 */
export const isRemade = (path: string, part: Part, read: ReadNumber): boolean =>
  isWeighed(part) &&
  !Number.isNaN(read(`${path}.weighed`)) &&
  !Number.isNaN(read(`${path}.estimate`)) &&
  Number.isNaN(read(`${path}.difference`));

/** What a part was made of when it was weighed and is not now, by its title; '' where it is made of the same. */
export function weighedAsTitle(document: Document, part: Part): string {
  const { weighed_as: then = '' } = part;
  if (isMadeOf(madeOfNow(document, part) ?? then, then)) return '';
  return asTitle(document, part, then);
}

function asTitle(document: Document, part: Part, then: string): string {
  const choice = cellsOf(document).find(({ kind, name }) => kind === 'choice' && name === cutFrom(part));
  const option = choice?.kind === 'choice' ? choice.options.find(({ name }) => name === then) : undefined;
  return option?.title ?? then.replaceAll('_', ' ');
}

/** What a trade of these choices makes of parts that are weighed: a sentence for all that were weighed as one option. */
export function remadeSentences(document: Document, choices: readonly string[]): readonly string[] {
  const sized = tradedSizes(document, choices);
  const made = cellsOf(document).flatMap((cell) => {
    if (cell.kind !== 'choice' || !choices.includes(cell.name)) return [];
    const weighed = tablesOf(document)
      .flatMap(({ rows }) => rows)
      .filter((part) => isWeighed(part) && part.weighed_as !== undefined && cutFrom(part) === cell.name);
    return [...new Set(weighed.map((part) => part.weighed_as!))].map((then) => {
      const parts = weighed.filter((part) => part.weighed_as === then);
      const titles = listed(parts.map(({ title, name }, k) => (k === 0 ? title || name : inSentence(title || name))));
      const made = asTitle(document, parts[0]!, then);
      const [are, count, their] = parts.length === 1 ? ['is', 'it counts', 'its'] : ['are', 'they count', 'their'];
      return `${titles} ${are} weighed as made of “${made}”: with another ${count} as re-made, by ${their} estimate.`;
    });
  });
  return [
    ...made,
    ...sized.map(
      ({ title, words }) => `${title} is weighed: with another ${words} it counts as re-made, by its estimate.`,
    ),
  ];
}

const tablesOf = (document: Document): readonly PartsCell[] =>
  cellsOf(document).filter((cell): cell is PartsCell => cell.kind === 'parts');

const asMadeNow = (document: Document, part: Part): Part => {
  const { weighed_as: _, ...rest } = part;
  const now = isWeighed(part) ? madeOfNow(document, part) : undefined;
  return now === undefined ? rest : { ...rest, weighed_as: now };
};

/** The edits that put what the scale says into a part, with what it is made of; undefined where the path is no weighed mass of a part. */
export function weighingPart(
  document: Document,
  path: string,
  text: string,
  read: ReadNumber = () => Number.NaN,
): readonly Change[] | undefined {
  for (const cell of tablesOf(document)) {
    const part = cell.rows.find(({ name }) => path === `${cell.name}.${name}.weighed`);
    if (!part) continue;
    const now = asMadeNow(document, { ...part, fields: { ...part.fields, weighed: text } });
    const fields =
      text.trim() === '' ? unsized(part) : { ...unsized(part), ...sizesOf(`${cell.name}.${part.name}`, part, read) };
    const rows = cell.rows.map((row) => (row === part ? { ...now, fields } : row));
    const same = now.weighed_as === part.weighed_as && sameTexts(fields, part.fields);
    const made: Change[] = same ? [] : [{ change: 'cell', cell: { ...cell, rows } }];
    return [...made, { change: 'text', path, text }, ...listing(document, cell.name, part, text)];
  }
  return undefined;
}

const sameTexts = (a: Part['fields'], b: Part['fields']): boolean =>
  [...new Set([...Object.keys(a), ...Object.keys(b)])].every((name) => a[name] === b[name]);

/** The texts of a part without what it was when it was weighed. */
function unsized({ shape, fields }: Part): Part['fields'] {
  const kept = new Set(partFields(shape).flatMap(({ name, asWeighed }) => (asWeighed === undefined ? [] : name)));
  return Object.fromEntries(Object.entries(fields).filter(([name]) => !kept.has(name)));
}

/** What a part is now, of which another counts as re-made. */
function sizesOf(path: string, part: Part, read: ReadNumber): Part['fields'] {
  return Object.fromEntries(
    partFields(part.shape).flatMap(({ name, unit, asWeighed }) => {
      if (asWeighed === undefined) return [];
      const now = read(asWeighed === 'areal_mass' ? `${cutFrom(part)}.areal_mass` : `${path}.${asWeighed}`);
      return Number.isNaN(now) ? [] : [[name, writeQuantity(now, unit)]];
    }),
  );
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
export function madeAsTyped(document: Document, paths: readonly string[], read?: ReadNumber): Document {
  return paths.reduce((now, path) => {
    const [change] = weighingPart(now, path, textAt(now, path) ?? '', read) ?? [];
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
