import { useSignal } from '@preact/signals';
import { micromark } from 'micromark';
import { useRef } from 'preact/hooks';
import type { NoteCell } from '../../engine/index';
import { WordsEntry } from '../controls/words-entry';
import { useSheet } from '../store/context';

/** Words of the sheet. Markup typed into a note is shown as typed: raw HTML stays off. */
export function NoteView({ cell }: { cell: NoteCell }) {
  const sheet = useSheet();
  const editing = useSignal(false);
  const goesBack = useRef(false);
  if (editing.value) {
    return (
      <WordsEntry
        label={`Words of ${cell.title}`}
        text={cell.text}
        onCommit={(text) => sheet.changeCell({ ...cell, text })}
        onDone={(text, byKeys) => {
          editing.value = false;
          goesBack.current = byKeys;
          if (text !== undefined) sheet.changeCell({ ...cell, text });
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
        ref={(button) => {
          if (goesBack.current) button?.focus();
          goesBack.current = false;
        }}
        onClick={() => {
          editing.value = true;
        }}
      >
        edit these words
      </button>
    </>
  );
}
