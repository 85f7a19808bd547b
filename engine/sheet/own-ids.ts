import type { Document, Sheet } from './document';
import { cellsOf } from './sheets';

/**
 * The document with an id of its own for each piece and each sheet. Files that were put together by hand or by version
 * control may have one twice; which of them has it says nothing, so the first keeps it and a later one gets another.
 */
export function withOwnIds(document: Document): Document {
  const pieceId = idGiver(cellsOf(document), 'c');
  const sheetId = idGiver(document.sheets, 's');
  let same = true;
  const own = <T extends { readonly id: string }>(thing: T, give: (id: string) => string): T => {
    const id = give(thing.id);
    if (id === thing.id) return thing;
    same = false;
    return { ...thing, id };
  };
  const sheets = document.sheets.map((sheet): Sheet => {
    const pieces = sheet.pieces.map((piece) => own(piece, pieceId));
    return { ...own(sheet, sheetId), pieces };
  });
  return same ? document : { ...document, sheets };
}

/** Gives each id back the first time, and a new one afterwards. */
function idGiver(things: readonly { readonly id: string }[], letter: string): (id: string) => string {
  const taken = new Set(things.map(({ id }) => id));
  const given = new Set<string>();
  let next = 1;
  return (id) => {
    let own = id;
    while (given.has(own) || (own !== id && taken.has(own))) own = `${letter}${next++}`;
    given.add(own);
    return own;
  };
}
