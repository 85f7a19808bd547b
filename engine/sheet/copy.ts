import { kindOf } from './cells/index';
import type { Cell, Document } from './document';
import { freeId, freeName, takenNames } from './free-names';
import { rename } from './rename';
import { cellsOf } from './sheets';
import { applyChanges } from './transaction';

/**
 * A cell that says the same as another under an id and names of its own. What it says of itself it says of the copy (a
 * line of a copied formula reads the copied lines); what it says of the rest of the document stays.
 */
export function copyOfCell(document: Document, cell: Cell): Cell {
  const taken = new Set(takenNames(document));
  let alone: Document = {
    ...document,
    sheets: [{ id: '', title: '', pieces: [{ ...cell, id: freeId(document), title: `${cell.title}, copy` }] }],
    rows: [],
    figures: [],
    baseline: undefined,
    variants: undefined,
  };
  for (const path of freeStanding(cell)) {
    const name = freeName(path, taken);
    taken.add(name);
    const renamed = rename(alone, path, name);
    if (!renamed.ok) throw new Error(renamed.message);
    alone = applyChanges(alone, renamed.changes).document;
  }
  return cellsOf(alone)[0]!;
}

/** Names that stand by themselves, not within the cell's own: those that two cells can't both have. */
const freeStanding = (cell: Cell): readonly string[] =>
  kindOf(cell)
    .owns(cell)
    .filter((path) => !path.includes('.'));
