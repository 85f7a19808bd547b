import type { Cell } from '../../../engine/index';
import type { Command } from '../../controls/menu';
import type { Sheet } from '../../store/sheet';
import { focusBalloon } from './focus';
import { columnOf, placeFurther, standingDrawing } from './order';

/** What can be done with a cell as a whole, in plain words. */
export function commandsOf(sheet: Sheet, cell: Cell): readonly Command[] {
  const { pieces } = sheet.shownSheet.peek();
  const standing = standingDrawing(sheet.cells.peek());
  const at = pieces.findIndex((each) => each.id === cell.id);
  const name: Command = {
    words: 'Title and name',
    run: () => {
      sheet.naming.value = cell.id;
    },
  };
  const copy: Command = { words: 'Copy', run: () => showCopy(sheet, cell.id) };
  const remove: Command = { words: 'Remove', run: () => removeAndGoOn(sheet, cell) };
  const toSheet: Command = {
    words: 'Move to another sheet',
    disabled: sheet.sheetList.peek().length === 1,
    run: () => {
      sheet.placing.value = cell.id;
    },
  };
  if (cell === standing) return [name, copy, remove];
  const move = (words: string, by: 1 | -1): Command => {
    const to = placeFurther(pieces, standing, cell.id, by);
    return {
      words,
      disabled: to === undefined,
      run: () => {
        if (to !== undefined) sheet.moveCell(cell.id, to);
        focusBalloon(cell);
      },
    };
  };
  const add = (words: string, place: number): Command => ({
    words,
    run: () => {
      sheet.adding.value = place;
    },
  });
  return [
    name,
    {
      words: cell.folded ? 'Open' : 'Close',
      run: () => sheet.fold(cell, !cell.folded),
    },
    move('Move up', -1),
    move('Move down', 1),
    toSheet,
    copy,
    add('Add before', at),
    add('Add after', at + 1),
    remove,
  ];
}

function showCopy(sheet: Sheet, id: string): void {
  const copy = sheet.copyCell(id);
  if (copy) focusBalloon(copy);
}

/** The cell that comes next, or else the one before, takes the focus of a cell that is gone. */
function removeAndGoOn(sheet: Sheet, cell: Cell): void {
  const column = columnOf(sheet.shownSheet.peek().pieces, standingDrawing(sheet.cells.peek()));
  const at = column.indexOf(cell);
  const next = column[at + 1] ?? column[at - 1];
  sheet.removeCell(cell.id);
  if (next) focusBalloon(next);
}
