import type { Part, PartsCell } from '../../../engine/index';
import { useSheet } from '../../store/context';
import { addingPart, copyOf, movePart, withoutPart } from './edits';
import { takenNames } from './taken';

interface CommandsProps {
  readonly cell: PartsCell;
  readonly part: Part;
  /** The part that is open afterwards. */
  onOpen(name: string | undefined): void;
}

/** What can be done with a part as a whole. */
export function PartCommands({ cell, part, onOpen }: CommandsProps) {
  const sheet = useSheet();
  const at = cell.rows.findIndex((row) => row.name === part.name);
  const move = (by: number): void => sheet.changeCell(movePart(cell, part.name, by));
  return (
    <p class="part-commands">
      <button
        type="button"
        class="word"
        onClick={() => {
          const copy = copyOf(part, takenNames(sheet, cell));
          sheet.edit(() => addingPart(cell, copy, part.name), copy.title);
          onOpen(copy.name);
        }}
      >
        Copy<span class="unseen"> {part.title}</span>
      </button>
      <button type="button" class="word" disabled={at === 0} onClick={() => move(-1)}>
        Move up<span class="unseen"> {part.title}</span>
      </button>
      <button type="button" class="word" disabled={at === cell.rows.length - 1} onClick={() => move(1)}>
        Move down<span class="unseen"> {part.title}</span>
      </button>
      <button
        type="button"
        class="word"
        onClick={() => {
          onOpen(undefined);
          sheet.changeCell(withoutPart(cell, part.name));
        }}
      >
        Remove<span class="unseen"> {part.title}</span>
      </button>
      <button type="button" class="word" onClick={() => onOpen(undefined)}>
        Close<span class="unseen"> {part.title}</span>
      </button>
    </p>
  );
}
