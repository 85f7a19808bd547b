import { useState } from 'preact/hooks';
import type { LogCell } from '../../../engine/index';
import { along } from '../../controls/along';
import { useSheet } from '../../store/context';
import { rowsFromCsv } from './csv';

/** Rows typed elsewhere, put below those of the log. What can't be taken stays in the room with the sentence that says why. */
export function PasteRows({ cell }: { cell: LogCell }) {
  const sheet = useSheet();
  const [text, setText] = useState('');
  const [said, setSaid] = useState('');
  const id = `${cell.id}-paste`;
  const take = (): void => {
    const titles = new Map(cell.columns.map(({ name, of }) => [name, sheet.name(of)?.title ?? of]));
    const pasted = rowsFromCsv(cell, titles, text);
    if (!pasted.ok) {
      setSaid(pasted.message);
      return;
    }
    sheet.changeCell({ ...cell, rows: [...cell.rows, ...pasted.rows] });
    setText('');
    setSaid(pasted.rows.length === 1 ? 'One flight was added.' : `${pasted.rows.length} flights were added.`);
  };
  const names = ['flight', 'laps', 'time', ...cell.columns.map(({ name }) => name), 'note'];
  return (
    <details class="set-up">
      <summary {...along()}>Paste flights</summary>
      <label class="set-up-word" for={id}>
        Comma-separated values, or rows copied from a table; the first line names the columns: {names.join(', ')}
      </label>
      <textarea
        id={id}
        class="note-text"
        rows={4}
        spellcheck={false}
        value={text}
        aria-describedby={`${id}-said`}
        onInput={({ currentTarget }) => setText(currentTarget.value)}
      />
      <p id={`${id}-said`} role="status">
        {said}
      </p>
      <button type="button" class="word" disabled={text.trim() === ''} onClick={take}>
        Add these flights
      </button>
    </details>
  );
}
