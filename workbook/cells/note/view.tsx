import { useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { type NoteCell, noteFormulas, saidPath } from '../../../engine/index';
import { along } from '../../controls/along';
import { WordsEntry } from '../../controls/words-entry';
import { useSheet } from '../../store/context';
import type { Sheet } from '../../store/sheet';
import { RowFaults } from '../shared/row-faults';
import { noteHtml } from './html';

/** Several formulas may wait for the same: that is said once. */
const firstToSay = (path: string, paths: readonly string[], sheet: Pick<Sheet, 'faultAt'>): number =>
  paths.findIndex((each) => sheet.faultAt(each)?.message === sheet.faultAt(path)?.message);

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
  const paths = noteFormulas(cell.text).map((_, k) => saidPath(cell.name, k));
  return (
    <>
      <div class="prose" dangerouslySetInnerHTML={{ __html: noteHtml(cell, sheet) }} />
      <RowFaults paths={paths.filter((path, k) => firstToSay(path, paths, sheet) === k)} />
      {paths.some((path) => sheet.faultAt(path)?.state === 'fault') && (
        <p class="aside">What stands in braces is a formula. Write \{'{'} for a brace that is only a brace.</p>
      )}
      <button
        type="button"
        {...along()}
        class="word quiet"
        ref={(button) => {
          if (goesBack.current) button?.focus();
          goesBack.current = false;
        }}
        onClick={() => {
          editing.value = true;
        }}
      >
        Edit these words
      </button>
    </>
  );
}
