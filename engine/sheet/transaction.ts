import type { Cell, Document } from './document';
import { freeze } from './freeze';
import { textAt, withText } from './paths';

/** Everything of a document but its cells and what says which format it is. `null` takes a part away. */
export type Head = {
  readonly [K in Exclude<keyof Document, 'cells' | 'format' | 'version'>]?: undefined extends Document[K]
    ? Document[K] | null
    : Document[K];
};

/** One edit, as plain data. */
export type Change =
  | { readonly change: 'insert'; readonly at: number; readonly cell: Cell }
  | { readonly change: 'remove'; readonly id: string }
  | { readonly change: 'move'; readonly id: string; readonly to: number }
  /** Puts a new state in place of the cell with the same id. */
  | { readonly change: 'cell'; readonly cell: Cell }
  /** Shows a cell as its title only, or whole (`null`: nothing is said of it): nothing that is computed. */
  | { readonly change: 'fold'; readonly id: string; readonly folded: boolean | null }
  | { readonly change: 'head'; readonly head: Head }
  | { readonly change: 'text'; readonly path: string; readonly text: string };

export interface Changed {
  readonly document: Document;
  /** Takes the edit back: applying it to `document` gives the document from before. */
  readonly inverse: Change;
}

/** Applies one edit. Throws RangeError for a place that isn't there: a mistake of the program, not of a person. */
export function applyChange(document: Document, change: Change, options: { readonly frozen?: boolean } = {}): Changed {
  const changed = apply(document, change);
  return options.frozen ? { ...changed, document: freeze(changed.document) } : changed;
}

/** Applies edits one after another; their inverses come in the order in which they have to be applied. */
export function applyChanges(
  document: Document,
  changes: readonly Change[],
  options: { readonly frozen?: boolean } = {},
): { readonly document: Document; readonly inverse: readonly Change[] } {
  const inverse: Change[] = [];
  let now = document;
  for (const change of changes) {
    const changed = applyChange(now, change, options);
    now = changed.document;
    inverse.unshift(changed.inverse);
  }
  return { document: now, inverse };
}

function apply(document: Document, change: Change): Changed {
  switch (change.change) {
    case 'insert':
      return insert(document, change.at, change.cell);
    case 'remove':
      return remove(document, change.id);
    case 'move':
      return move(document, change.id, change.to);
    case 'cell':
      return replace(document, change.cell);
    case 'fold':
      return fold(document, change.id, change.folded);
    case 'head':
      return setHead(document, change.head);
    case 'text':
      return setText(document, change.path, change.text);
  }
}

function insert(document: Document, at: number, cell: Cell): Changed {
  const { cells } = document;
  if (!(at >= 0 && at <= cells.length)) {
    throw new RangeError(`A cell cannot be put in at ${at}; 0 to ${cells.length} are allowed`);
  }
  if (cells.some((each) => each.id === cell.id)) throw new RangeError(`There is a cell with id ${cell.id} already`);
  return {
    document: { ...document, cells: cells.toSpliced(at, 0, cell) },
    inverse: { change: 'remove', id: cell.id },
  };
}

function remove(document: Document, id: string): Changed {
  const at = indexOf(document, id);
  return {
    document: { ...document, cells: document.cells.toSpliced(at, 1) },
    inverse: { change: 'insert', at, cell: document.cells[at]! },
  };
}

function move(document: Document, id: string, to: number): Changed {
  const { cells } = document;
  const at = indexOf(document, id);
  if (!(to >= 0 && to < cells.length)) {
    throw new RangeError(`A cell cannot move to ${to}; 0 to ${cells.length - 1} are allowed`);
  }
  return {
    document: { ...document, cells: cells.toSpliced(at, 1).toSpliced(to, 0, cells[at]!) },
    inverse: { change: 'move', id, to: at },
  };
}

function replace(document: Document, cell: Cell): Changed {
  const at = indexOf(document, cell.id);
  return {
    document: { ...document, cells: document.cells.with(at, cell) },
    inverse: { change: 'cell', cell: document.cells[at]! },
  };
}

function fold(document: Document, id: string, folded: boolean | null): Changed {
  const at = indexOf(document, id);
  const { folded: before, ...cell } = document.cells[at]!;
  return {
    document: { ...document, cells: document.cells.with(at, folded === null ? cell : { ...cell, folded }) },
    inverse: { change: 'fold', id, folded: before ?? null },
  };
}

function setHead(document: Document, head: Head): Changed {
  const before: Record<string, unknown> = {};
  const after: Record<string, unknown> = { ...document };
  for (const [key, value] of Object.entries(head)) {
    before[key] = document[key as keyof Document] ?? null;
    if (value === null || value === undefined) delete after[key];
    else after[key] = value;
  }
  return { document: after as unknown as Document, inverse: { change: 'head', head: before as Head } };
}

function setText(document: Document, path: string, text: string): Changed {
  const before = textAt(document, path);
  const changed = withText(document, path, text);
  if (before === undefined || !changed) throw new RangeError(`No text can stand at ${path}`);
  return { document: changed, inverse: { change: 'text', path, text: before } };
}

function indexOf(document: Document, id: string): number {
  const at = document.cells.findIndex((cell) => cell.id === id);
  if (at < 0) throw new RangeError(`There is no cell with id ${id}`);
  return at;
}
