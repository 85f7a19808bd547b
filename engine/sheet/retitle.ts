import type { Cell, Document } from './document';
import { freeName, isOwnName, nameFromTitle, takenNames } from './free-names';
import { rename } from './rename';
import { cellsOf } from './sheets';
import { applyChanges, type Change } from './transaction';

/** Kinds whose name formulas say all over: it stays until it is changed by itself. */
const STEADY: ReadonlySet<Cell['kind']> = new Set(['model', 'parts']);

/** The edits that give a cell another title. A name that came from the old title by itself follows, with every formula that says it. */
export function retitleCell(document: Document, id: string, title: string): readonly Change[] {
  const cell = cellsOf(document).find((each) => each.id === id);
  if (!cell) return [];
  const wanted = nameFromTitle(title);
  const follows = !STEADY.has(cell.kind) && wanted !== '' && isOwnName(cell.name, cell.title);
  const others = new Set([...takenNames(document)].filter((name) => name !== cell.name));
  const renamed = follows ? rename(document, cell.name, freeName(wanted, others)) : undefined;
  const changes = renamed?.ok ? renamed.changes : [];
  const now = cellsOf(applyChanges(document, changes).document).find((each) => each.id === id)!;
  return [...changes, { change: 'cell', cell: { ...now, title } }];
}
