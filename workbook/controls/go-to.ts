import type { Fault } from '../../engine/index';
import type { Sheet } from '../store/sheet';
import { wantPlace } from './place-in-text';

/** A place of the sheet: a cell's id, what in it, and which characters of its text. */
export type Place = Pick<Fault, 'cell' | 'path' | 'from' | 'to'>;

/** Brings a place before the reader: shows its sheet, unfolds what hides it and puts the focus there. */
export function goTo(
  sheet: Pick<Sheet, 'cells' | 'showSheetOf' | 'unfold'>,
  { cell: id, path, from, to }: Place,
): void {
  const cell = sheet.cells.value.find((each) => each.id === id);
  if (!cell) return;
  sheet.showSheetOf(cell.id);
  if (cell.folded) sheet.unfold(cell);
  // What was hidden is drawn before the next frame.
  requestAnimationFrame(() => {
    const piece = document.getElementById(`cell-${cell.name}`);
    if (!piece) return;
    const found = placeIn(piece, path);
    for (let fold = found.closest('details'); fold; fold = fold.parentElement?.closest('details') ?? null) {
      fold.open = true;
    }
    if (!found.matches(FOCUSABLE)) found.tabIndex = -1;
    if (from !== undefined && found.dataset.text === path) wantPlace(found, { from, to: to ?? from });
    found.scrollIntoView({ block: 'center' });
    found.focus({ preventScroll: true });
  });
}

const FOCUSABLE = 'input, select, textarea, button, a[href], [contenteditable="true"]';

/** What stands for a path or else for what holds it: a text, a row, at last the cell. */
function placeIn(piece: HTMLElement, path: string): HTMLElement {
  for (let at = path; at !== ''; at = at.slice(0, Math.max(0, at.lastIndexOf('.')))) {
    const name = CSS.escape(at);
    const row = CSS.escape(at.slice(at.lastIndexOf('.') + 1));
    const text = `[data-text="${name}"], select[data-path="${name}"], [role="combobox"][data-path="${name}"], fieldset[data-path="${name}"]`;
    const found =
      piece.querySelector<HTMLElement>(text) ??
      piece.querySelector<HTMLElement>(`[data-path="${name}"], [data-part="${row}"]`);
    if (found) return found;
  }
  return piece;
}
