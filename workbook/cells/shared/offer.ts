import type { BlockCell, Cell } from '../../../engine/index';
import type { Sheet } from '../../store/sheet';
import type { Offer, TraceOffer } from '../chart/fit';

/** What charts of the open sheet can be drawn from. */
export function offerOf(sheet: Sheet): Offer {
  const cells = sheet.cells.value;
  return {
    cells,
    traces: cells.flatMap((cell) => (cell.kind === 'model' ? traceOffers(cell, sheet) : [])),
    isChoice: (path) => sheet.name(path)?.options !== undefined,
  };
}

function traceOffers(cell: BlockCell, sheet: Sheet): TraceOffer[] {
  return (sheet.blockNamed(cell.of)?.traces ?? [])
    .filter(({ outlines }) => !outlines)
    .map(({ name, title, columns }) => ({
      path: `${cell.name}.${name}`,
      title: `${titleOf(cell)}: ${title}`,
      round: columns[0]?.unit === '°',
      columns,
    }));
}

export const titleOf = (cell: Cell): string => (cell.title === '' ? cell.name : cell.title);
