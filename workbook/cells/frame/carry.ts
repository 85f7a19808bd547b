import type { Cell } from '../../../engine/index';
import type { Sheet } from '../../store/sheet';
import { columnOf, standingDrawing } from './order';

/** Pixels that a press may stray and still be a press. */
const STRAY = 6;
/** Pixels from the edge of the window where a carried cell makes the sheet scroll, and how far a frame. */
const EDGE = 64;
const SCROLL = 14;

/**
 * Listeners for a balloon by which its cell is carried to another place: it is put down where the line shows, or on the sheet
 * in whose line of the list the pointer is; Escape leaves it where it was. A press that stays in place is a press.
 */
export function gripOf(sheet: Sheet, cell: Cell): Readonly<Record<string, unknown>> {
  let start: { x: number; y: number; pointer: number } | undefined;
  let [x, y] = [0, 0];
  let carried = false;

  const put = (): void => {
    const onto = ontoAt(x, y);
    sheet.carrying.value = onto === undefined ? { id: cell.id, to: gapAt(sheet, y) } : { id: cell.id, to: -1, onto };
  };
  const end = (): void => {
    start = undefined;
    sheet.carrying.value = undefined;
    document.removeEventListener('keydown', leave, true);
  };
  const leave = (event: KeyboardEvent): void => {
    if (event.key !== 'Escape') return;
    event.preventDefault();
    event.stopPropagation();
    end();
  };
  const scroll = (): void => {
    if (!sheet.carrying.peek()) return;
    const by = y < EDGE ? -SCROLL : y > window.innerHeight - EDGE ? SCROLL : 0;
    if (by !== 0) {
      window.scrollBy(0, by);
      put();
    }
    requestAnimationFrame(scroll);
  };

  return {
    onPointerDown(event: PointerEvent) {
      carried = false;
      if (event.button !== 0) return;
      start = { x: event.clientX, y: event.clientY, pointer: event.pointerId };
      // A quick hand has left the balloon before its first move is told.
      (event.currentTarget as Element).setPointerCapture(event.pointerId);
    },
    onPointerMove(event: PointerEvent) {
      if (start?.pointer !== event.pointerId) return;
      [x, y] = [event.clientX, event.clientY];
      if (!sheet.carrying.peek()) {
        if (Math.hypot(x - start.x, y - start.y) < STRAY) return;
        carried = true;
        document.addEventListener('keydown', leave, true);
        put();
        requestAnimationFrame(scroll);
      }
      put();
    },
    onPointerUp() {
      const at = sheet.carrying.peek();
      end();
      if (!at) return;
      if (at.onto === undefined) sheet.moveCell(cell.id, at.to);
      else sheet.moveToSheet(cell.id, at.onto);
    },
    onPointerCancel: end,
    onClickCapture(event: MouseEvent) {
      if (!carried) return;
      carried = false;
      event.preventDefault();
      event.stopPropagation();
    },
  };
}

/** Place on the shown sheet of the gap that is nearest to a height of the window. */
function gapAt(sheet: Sheet, y: number): number {
  const { pieces } = sheet.shownSheet.peek();
  for (const each of columnOf(pieces, standingDrawing(sheet.cells.peek()))) {
    const box = document.getElementById(`cell-${each.name}`)?.getBoundingClientRect();
    if (box && y < (box.top + box.bottom) / 2) return pieces.indexOf(each);
  }
  return pieces.length;
}

/** Id of the sheet whose line in the list is under the pointer; '' over what opens the list. */
const ontoAt = (x: number, y: number): string | undefined =>
  document.elementFromPoint(x, y)?.closest<HTMLElement>('[data-onto]')?.dataset.onto;
