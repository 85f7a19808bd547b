import type { Cell } from '../../../engine/index';

/** Puts the focus on a cell's balloon once it is drawn. */
export function focusBalloon(cell: Pick<Cell, 'name'>): void {
  requestAnimationFrame(() => {
    const balloon = pieceOf(cell)?.querySelector<HTMLElement>('.balloon');
    balloon?.focus({ preventScroll: true });
    balloon?.scrollIntoView({ block: 'nearest' });
  });
}

/** Puts the focus on the first thing of a cell's content that can be typed or pressed, else on its balloon. */
export function focusContent(cell: Pick<Cell, 'name'>): void {
  requestAnimationFrame(() => {
    const piece = pieceOf(cell);
    const first =
      piece?.querySelector<HTMLElement>('.cell-body :is([data-text], input, select, textarea)') ??
      piece?.querySelector<HTMLElement>('.cell-body button') ??
      piece?.querySelector<HTMLElement>('.balloon');
    piece?.scrollIntoView({ block: 'nearest' });
    first?.focus();
  });
}

const pieceOf = (cell: Pick<Cell, 'name'>): HTMLElement | null => document.getElementById(`cell-${cell.name}`);
