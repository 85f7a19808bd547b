import type { BlockCell, BlockDescription } from '../../../engine/index';
import { addRow, rowOf } from '../../library/own-edits';
import { useSheet } from '../../store/context';
import { keptBefore, keptDraft, keptFault } from './kept-row';

/** Keeps what was found from measurements as a row of the user's own by one press, and says that it is kept. */
export function KeepRow({ cell, block }: { cell: BlockCell; block: BlockDescription }) {
  const sheet = useSheet();
  const fault = keptFault(cell, block, sheet);
  const table = sheet.tableNamed(block.keeps?.table ?? '');
  if (fault === '' || !table) return null;
  if (fault !== undefined) return <p class="aside">{fault}</p>;
  const draft = keptDraft(cell, block, sheet);
  const kept = keptBefore(sheet.part('rows'), table.name, draft);
  if (kept) {
    return (
      <p class="aside" role="status">
        Kept as “{kept.title}” among the {table.title.toLowerCase()} of this design: a choice among{' '}
        {table.title.toLowerCase()} offers it.
      </p>
    );
  }
  return (
    <button
      type="button"
      class="word"
      onClick={() => {
        const row = rowOf(draft, table.name, sheet.document.peek(), sheet.offered.peek()?.tables ?? []);
        sheet.edit((document) => addRow(document, row), `own ${table.one} ${row.title}`);
      }}
    >
      Keep as own row
    </button>
  );
}
