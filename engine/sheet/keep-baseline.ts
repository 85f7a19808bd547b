import { baselineOf, isOfDesign } from './baseline';
import type { Document } from './document';
import { cellsOf } from './sheets';
import { applyChanges, type Change } from './transaction';

/**
 * The changes, and before them what lets a baseline outlive them: where they add or remove pieces or rows of the design, or
 * make others of them, the baseline gets its own from then on.
 */
export function keepingBaseline(document: Document, changes: readonly Change[]): readonly Change[] {
  const design = document.baseline_design ? undefined : baselineOf(document);
  if (!design || !changes.some(mayBuild)) return changes;
  if (shapeOf(document) === shapeOf(applyChanges(document, changes).document)) return changes;
  const sheets = design.sheets.map((sheet) => ({ ...sheet, pieces: sheet.pieces.filter(isOfDesign) }));
  return [{ change: 'head', head: { baseline_design: { sheets, rows: design.rows } } }, ...changes];
}

const BUILDS: ReadonlySet<Change['change']> = new Set(['insert', 'remove', 'cell', 'insert_sheet', 'remove_sheet']);
const mayBuild = (change: Change): boolean =>
  BUILDS.has(change.change) || (change.change === 'head' && change.head.rows !== undefined);

/** Keys whose text says what a thing is; any other may be typed or given as a name. */
const TELLING: ReadonlySet<string> = new Set(['id', 'kind', 'of', 'shape', 'table', 'unit']);

/** What a design is made of, whatever is typed in it, what it is called and on which sheet it stands. */
function shapeOf(document: Document): string {
  const cells = cellsOf(document)
    .filter(isOfDesign)
    .toSorted((a, b) => (a.id < b.id ? -1 : 1));
  return JSON.stringify([cells, document.rows], (key, value) => {
    if (key === 'fields' || key === 'values' || key === 'folded' || key === 'weighed_as') return undefined;
    return typeof value === 'string' && !TELLING.has(key) ? '' : value;
  });
}
