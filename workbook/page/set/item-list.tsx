import type { Cell } from '../../../engine/index';
import { columnOf, focusContent, lineOf, standingDrawing } from '../../cells/index';
import { along } from '../../controls/along';
import { useSheet } from '../../store/context';

/** The item list of the open sheet: balloon, title, one value; a press goes to the piece. */
export function ItemList({ onGone }: { onGone?(): void }) {
  const sheet = useSheet();
  const pieces = columnOf(sheet.shownSheet.value.pieces, standingDrawing(sheet.cells.value));
  return (
    <ol class="item-list">
      {pieces.map((cell, k) => (
        <Item key={cell.id} cell={cell} number={k + 1} onGone={onGone} />
      ))}
    </ol>
  );
}

function Item({ cell, number, onGone }: { cell: Cell; number: number; onGone?: (() => void) | undefined }) {
  const sheet = useSheet();
  const { value, stands } = lineOf(cell, sheet);
  const faults = sheet.faultsOfCell(cell.id);
  const fault = faults.some(({ state }) => state === 'fault');
  const wrong = stands === 'broken' || stands === 'low' || fault;
  const words = stands === 'broken' ? 'stop' : fault ? 'fault' : faults.length > 0 ? 'waits' : value;
  return (
    <li class={wrong ? 'wrong' : ''}>
      <a
        {...along(number === 1)}
        href={`#cell-${cell.name}`}
        onClick={(event) => {
          event.preventDefault();
          onGone?.();
          goTo(cell);
        }}
      >
        <span class="item-number">{number}</span>
        <span class="item-title">{cell.title}</span>
        <span class="item-value">{words}</span>
      </a>
    </li>
  );
}

function goTo(cell: Cell): void {
  document.getElementById(`cell-${cell.name}`)?.scrollIntoView({ block: 'start' });
  focusContent(cell);
}
