import { useSignal } from '@preact/signals';
import { micromark } from 'micromark';
import type { NoteCell } from '../../engine/index';
import { useSheet } from '../store/context';

/** Words of the sheet. Markup typed into a note is shown as typed: raw HTML stays off. */
export function NoteView({ cell }: { cell: NoteCell }) {
  const sheet = useSheet();
  const editing = useSignal(false);
  if (editing.value) {
    return (
      <textarea
        class="note-text"
        aria-label={`Words of ${cell.title}`}
        rows={Math.max(4, cell.text.split('\n').length + 1)}
        ref={(field) => field?.focus()}
        defaultValue={cell.text}
        onKeyDown={(event) => {
          if (event.key !== 'Escape') return;
          event.currentTarget.value = cell.text;
          event.currentTarget.blur();
        }}
        onBlur={(event) => {
          editing.value = false;
          if (event.currentTarget.value !== cell.text) sheet.changeCell({ ...cell, text: event.currentTarget.value });
        }}
      />
    );
  }
  return (
    <>
      {/* micromark escapes raw HTML and refuses addresses that could run code. */}
      <div class="prose" dangerouslySetInnerHTML={{ __html: micromark(cell.text) }} />
      <button
        type="button"
        class="word quiet"
        onClick={() => {
          editing.value = true;
        }}
      >
        edit these words
      </button>
    </>
  );
}
