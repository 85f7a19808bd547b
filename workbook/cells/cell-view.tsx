import type { ComponentType } from 'preact';
import type { Cell } from '../../engine/index';
import { CellFrame } from './cell-frame';
import { views } from './views';

/** One numbered piece of the sheet. */
export function CellView({ cell, number }: { cell: Cell; number: number }) {
  // The view of a cell's own kind takes that cell.
  const View = views[cell.kind] as ComponentType<{ cell: Cell }>;
  return (
    <CellFrame cell={cell} number={number}>
      <View cell={cell} />
    </CellFrame>
  );
}
