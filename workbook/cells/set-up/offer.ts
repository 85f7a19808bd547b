import type { BlockCell, Cell } from '../../../engine/index';
import type { Sheet } from '../../store/sheet';
import type { Offer, Ring } from './chart-fit';

/** What charts of the open sheet can be drawn from. */
export function offerOf(sheet: Sheet): Offer {
  const { cells } = sheet.document.value;
  return {
    cells,
    rings: cells.flatMap((cell) => (cell.kind === 'block' ? ringsOf(cell, sheet) : [])),
    isChoice: (path) => sheet.name(path)?.options !== undefined,
  };
}

function ringsOf(cell: BlockCell, sheet: Sheet): Ring[] {
  return (sheet.blockNamed(cell.block)?.traces ?? []).flatMap(({ name, title, columns: [along, ...columns] }) =>
    along?.unit === '°' ? [{ path: `${cell.name}.${name}`, title: `${titleOf(cell)}: ${title}`, columns }] : [],
  );
}

export const titleOf = (cell: Cell): string => (cell.title === '' ? cell.name : cell.title);
