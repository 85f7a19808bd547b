import { kindOf, type Text } from './cells/index';
import type { Document } from './document';
import { ownRowTexts, putInOwnRows } from './own-rows';
import { cellsOf, withPiece } from './sheets';

/**
 * Every text that a person may set, in reading order. Fields of blocks that have their default aren't among them.
 */
export function textsOf(document: Document): Text[] {
  return [...cellsOf(document).flatMap((cell) => kindOf(cell).texts(cell)), ...ownRowTexts(document)];
}

/** The text at a path; '' for a field of a block that has its default; undefined where no text can stand. */
export function textAt(document: Document, path: string): string | undefined {
  for (const cell of cellsOf(document)) {
    if (!mayHold(cell.name, cell.kind, path)) continue;
    const text = kindOf(cell)
      .texts(cell)
      .find((each) => each.path === path)?.text;
    if (text !== undefined) return text;
  }
  const own = ownRowTexts(document).find((each) => each.path === path)?.text;
  return own ?? (putText(document, path, '') ? '' : undefined);
}

/** Kinds whose texts have paths that don't begin with the cell's own name. */
const FREE_NAMES: ReadonlySet<string> = new Set(['variables', 'formula']);

const mayHold = (name: string, kind: string, path: string): boolean =>
  FREE_NAMES.has(kind) || path === name || path.startsWith(`${name}.`);

/** The document with one text replaced and nothing else; undefined where no text can stand at this path. */
export function putText(document: Document, path: string, text: string): Document | undefined {
  for (const cell of cellsOf(document)) {
    if (!mayHold(cell.name, cell.kind, path)) continue;
    const changed = kindOf(cell).put(cell, path, text);
    if (changed) return withPiece(document, changed);
  }
  return putInOwnRows(document, path, text);
}
