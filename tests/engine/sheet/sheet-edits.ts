import type { Document, Sheet } from '../../../engine/sheet/document';
import { cellsOf, freeSheetId } from '../../../engine/sheet/sheets';
import type { Change } from '../../../engine/sheet/transaction';
import type { Random } from './random';

/** A random edit of the sheets of a design or of what stands on which. */
export function randomSheetEdit(document: Document, random: Random): Change {
  const { sheets } = document;
  const sheet = random.pick(sheets);
  const cells = cellsOf(document);
  switch (random.below(sheets.length > 1 && cells.length > 0 ? 5 : 1)) {
    case 0:
      return { change: 'insert_sheet', at: random.below(sheets.length + 1), sheet: emptySheet(document) };
    case 1:
      return { change: 'remove_sheet', id: sheet.id };
    case 2:
      return { change: 'move_sheet', id: sheet.id, to: random.below(sheets.length) };
    case 3:
      return { change: 'title_sheet', id: sheet.id, title: `Sheet ${random.below(100)}` };
    default: {
      const { id } = random.pick(cells);
      const here = sheet.pieces.some((piece) => piece.id === id) ? 1 : 0;
      return { change: 'move', id, sheet: sheet.id, to: random.below(sheet.pieces.length + 1 - here) };
    }
  }
}

const emptySheet = (document: Document): Sheet => ({ id: freeSheetId(document), title: 'New', pieces: [] });
