import { kindOf } from './cells/index';
import type { Document } from './document';
import { nameFault } from './names';
import { cellsOf } from './sheets';

/** What a title is called in formulas: "Elevator horn, 25 mm" → elevator_horn_25_mm. */
export function nameFromTitle(title: string): string {
  const plain = title.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
  return plain
    .replace(/[^a-z0-9]+/g, '_')
    .replace(/^[^a-z]+|_+$/g, '')
    .slice(0, 40)
    .replace(/_+$/, '');
}

/** The wanted name, or the first of wanted_2, wanted_3 … that is free and may be a name. */
export function freeName(wanted: string, taken: ReadonlySet<string>): string {
  const isFree = (name: string): boolean => !taken.has(name) && nameFault(name) === undefined;
  const stem = wanted.replace(/_\d+$/, '');
  let name = wanted;
  for (let k = 2; !isFree(name); k++) name = `${stem}_${k}`;
  return name;
}

/** Whether a name is the one that came from this title by itself, so that it may follow when the title changes. */
export const isOwnName = (name: string, title: string): boolean =>
  name.replace(/_\d+$/, '') === nameFromTitle(title).replace(/_\d+$/, '');

/** Paths of everything in a document that has a name of its own. */
export const ownedPaths = (document: Document): readonly string[] => [
  ...cellsOf(document).flatMap((cell) => kindOf(cell).owns(cell)),
  ...document.rows.map((row) => row.name),
];

/** Names that a new cell, variable or line of this document can't have. */
export const takenNames = (document: Document): ReadonlySet<string> => new Set(ownedPaths(document));

/** Gives ids that no cell of the document has, another one each time. */
export function freeIds(document: Document): () => string {
  const numbers = cellsOf(document).map((cell) => Number(/^c(\d+)$/.exec(cell.id)?.[1] ?? 0));
  let last = Math.max(0, ...numbers);
  return () => `c${String(++last).padStart(2, '0')}`;
}

/** An id that no cell of the document has. */
export const freeId = (document: Document): string => freeIds(document)();
