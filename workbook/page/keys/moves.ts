import type { Cell } from '../../../engine/index';
import { columnOf, focusBalloon, standingDrawing } from '../../cells/index';
import type { Sheet } from '../../store/sheet';

/** Place in the column of the open sheet of the piece that has the focus; −1 where none has. */
function placeOfFocus(sheet: Sheet): number {
  const here = document.activeElement?.closest('article.cell')?.id;
  return columnHere(sheet).findIndex((cell) => `cell-${cell.name}` === here);
}

const columnHere = (sheet: Sheet) => columnOf(sheet.shownSheet.peek().pieces, standingDrawing(sheet.cells.peek()));

/** Puts the focus on the piece that comes so many places further; from elsewhere on the first or the last. */
export function goToPiece(sheet: Sheet, by: 1 | -1): void {
  const column = columnHere(sheet);
  const at = placeOfFocus(sheet);
  const to = at < 0 ? (by === 1 ? 0 : column.length - 1) : at + by;
  const piece = column[Math.max(0, Math.min(column.length - 1, to))];
  if (piece) focusBalloon(piece);
}

/** Shows the sheet that comes so many places further, with the focus on its first piece. */
export function goToSheet(sheet: Sheet, by: 1 | -1): void {
  const list = sheet.sheetList.peek();
  const at = list.findIndex(({ id }) => id === sheet.shownSheet.peek().id);
  const next = list[at + by];
  if (next) showSheet(sheet, next.id);
}

/** Shows a sheet, says which it is, and puts the focus on its first piece. */
export function showSheet(sheet: Sheet, id: string): void {
  const list = sheet.sheetList.peek();
  const told = list.find((each) => each.id === id);
  if (!told) return;
  sheet.showSheet(id);
  sheet.told.value = `Sheet ${told.number} of ${list.length}: ${told.title}.`;
  const [first] = columnHere(sheet);
  if (first) focusBalloon(first);
  else requestAnimationFrame(() => document.getElementById('pieces')?.focus());
}

/** Shows a piece on its sheet, with the focus on its number. */
export function goToPieceOf(sheet: Sheet, cell: Cell): void {
  sheet.showSheetOf(cell.id);
  if (cell === standingDrawing(sheet.cells.peek())) document.getElementById(`cell-${cell.name}`)?.focus();
  else focusBalloon(cell);
}

/** Opens the list of what can be added, for the place behind the piece that has the focus, or else the end of the sheet. */
export function addBehind(sheet: Sheet): void {
  const { pieces } = sheet.shownSheet.peek();
  const here = columnHere(sheet)[placeOfFocus(sheet)];
  sheet.adding.value = here ? pieces.indexOf(here) + 1 : pieces.length;
}
