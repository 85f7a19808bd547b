import type { ComponentChildren } from 'preact';
import { vi } from 'vitest';
import type { Cell, Document } from '../../../engine/index';
import { startEngine } from '../../../engine/study/index';
import { SheetContext } from '../../../workbook/store/context';
import { createSheet, type Sheet } from '../../../workbook/store/sheet';
import { library, smallDesign } from '../../engine/sheet/small';
import type { Page } from '../drawing/page';

/** The small design with one more piece on it. */
export function withPiece(piece: Cell): Document {
  const small = smallDesign();
  const [first] = small.sheets;
  return { ...small, sheets: [{ ...first!, pieces: [...first!.pieces, piece] }] };
}

/** Opens a document with an engine of its own, on a clock that stands still, and draws something of it. */
export async function showOf(
  page: Page,
  document: Document,
  drawn: (sheet: Sheet) => ComponentChildren,
): Promise<Sheet> {
  const engine = startEngine(library, { pause: () => Promise.resolve(), now: () => 0 });
  const sheet = createSheet(document, {
    engine,
    keep: { write() {} },
    loadDemo: async () => '',
    frozen: true,
    now: () => 0,
  });
  await vi.advanceTimersByTimeAsync(60);
  page.show(<SheetContext.Provider value={sheet}>{drawn(sheet)}</SheetContext.Provider>);
  await vi.advanceTimersByTimeAsync(60);
  return sheet;
}
