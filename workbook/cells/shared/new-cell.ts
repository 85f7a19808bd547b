import { type Cell, type Document, freeId, freeName, takenNames } from '../../../engine/index';

/** One line of the list of what can be added. */
export interface Offer {
  readonly key: string;
  readonly word: string;
  /** What it is for. */
  readonly about: string;
  /** The cell as it begins, for this document. */
  make(document: Document): Cell;
}

/** A cell without what every cell has. */
export type Contents<C> = C extends Cell ? Omit<C, 'id' | 'name' | 'title'> : never;

/** A cell with an id and a name that are free. */
export function cellOf(document: Document, name: string, title: string, contents: Contents<Cell>): Cell {
  return { id: freeId(document), name: freeName(name, takenNames(document)), title, ...contents } as Cell;
}
