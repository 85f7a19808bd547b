import { commandsOf, standingDrawing, TitleForm } from '../../cells/index';
import { Menu } from '../../controls/menu';
import { useSheet } from '../../store/context';

/** What can be done with the drawing that stands beside the cells, which has no balloon. */
export function DrawingCommands() {
  const sheet = useSheet();
  const cell = standingDrawing(sheet.cells.value);
  if (!cell) return null;
  return (
    <div class="drawing-commands" id={`cell-${cell.name}`} tabIndex={-1}>
      <Menu class="word quiet balloon-word" label={`${cell.title}: commands`} commands={() => commandsOf(sheet, cell)}>
        {cell.title}
      </Menu>
      {sheet.naming.value === cell.id && <TitleForm cell={cell} />}
    </div>
  );
}
