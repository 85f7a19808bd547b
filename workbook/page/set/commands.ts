import type { Command } from '../../controls/menu';
import type { Sheet } from '../../store/sheet';
import type { SheetTold } from '../../store/sheet-set';

/** What can be done with a sheet as a whole, in plain words. */
export function sheetCommands(
  sheet: Sheet,
  told: SheetTold,
  { name, copyTo }: { name(): void; copyTo(): void },
): readonly Command[] {
  const { id, number } = told;
  const count = sheet.sheetList.peek().length;
  const move = (words: string, by: 1 | -1): Command => ({
    words,
    disabled: by === 1 ? number === count : number === 1,
    run: () => sheet.moveSheet(id, number - 1 + by),
  });
  return [
    { words: 'Title', run: name },
    move('Move up', -1),
    move('Move down', 1),
    { words: 'Copy', run: () => sheet.copySheet(id) },
    { words: 'Copy to another design', run: copyTo },
    { words: 'Remove', disabled: count === 1, run: () => sheet.removeSheet(id) },
  ];
}
