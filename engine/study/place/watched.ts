import type { Cell, CheckCell, Document } from '../../sheet/document';
import { cellsOf } from '../../sheet/sheets';

/** The check of the design that watches the same result on every side on which this piece, a check too, would. */
export function watchedAlready(piece: Cell, document: Document): CheckCell | undefined {
  if (piece.kind !== 'check') return undefined;
  return cellsOf(document).find(
    (cell): cell is CheckCell =>
      cell.kind === 'check' &&
      cell.of === piece.of &&
      (cell.low !== '' || piece.low === '') &&
      (cell.high !== '' || piece.high === ''),
  );
}
