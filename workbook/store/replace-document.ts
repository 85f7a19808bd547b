import type { Change, Document } from '../../engine/index';

/** Changes that put another document in place of the open one, so that opening a file can be taken back like any edit. */
export function replaceDocument(open: Document, next: Document): Change[] {
  return [
    ...open.cells.map((cell): Change => ({ change: 'remove', id: cell.id })),
    {
      change: 'head',
      head: {
        title: next.title,
        drawn: next.drawn,
        date: next.date,
        sheet: next.sheet,
        invented: next.invented ?? null,
        units: next.units,
        rows: next.rows,
        figures: next.figures,
        baseline: next.baseline ?? null,
      },
    },
    ...next.cells.map((cell, at): Change => ({ change: 'insert', at, cell })),
  ];
}
