import { useMemo } from 'preact/hooks';
import type { Cell } from '../../../engine/index';
import { Menu } from '../../controls/menu';
import { useSheet } from '../../store/context';
import { gripOf } from './carry';
import { commandsOf } from './cell-commands';

/** The number on its leader: a press opens what can be done with the cell, a drag carries the cell elsewhere. */
export function Balloon({ cell, number }: { cell: Cell; number: number }) {
  const sheet = useSheet();
  // The cell itself is looked up when it's needed: a grip outlives the states of its cell.
  const grip = useMemo(() => gripOf(sheet, cell), [sheet, cell.id]);
  return (
    <Menu
      along="enters"
      class="balloon"
      label={`${number}, ${cell.title}: commands`}
      commands={() => commandsOf(sheet, cell)}
      grip={grip}
    >
      {number}
    </Menu>
  );
}
