import { columnOf, focusBalloon, standingDrawing } from '../../cells/index';
import { useSheet } from '../../store/context';
import { ChoiceDialog } from './choice-dialog';

/** The sheets that a piece can go to, by keys as well as by a press. */
export function MoveDialog() {
  const sheet = useSheet();
  const id = sheet.placing.value;
  const cell = sheet.cells.value.find((each) => each.id === id);
  if (!cell) return null;
  const here = sheet.shownSheet.value.id;
  const move = (to: string) => (): void => {
    const column = columnOf(sheet.shownSheet.peek().pieces, standingDrawing(sheet.cells.peek()));
    const at = column.indexOf(cell);
    sheet.moveToSheet(cell.id, to);
    const next = column[at + 1] ?? column[at - 1];
    if (next) focusBalloon(next);
  };
  return (
    <ChoiceDialog
      title={`Move “${cell.title}” to`}
      places={sheet.sheetList.value.map((told) => ({
        ...{ key: told.id, words: `${told.number} ${told.title}`, choose: move(told.id) },
        ...(told.id === here ? { disabled: true, aside: 'it stands here' } : {}),
      }))}
      onClose={() => (sheet.placing.value = undefined)}
    />
  );
}
