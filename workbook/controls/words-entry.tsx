import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { editorMaker, fetchEditor } from '../editor/index';
import { useSheet } from '../store/context';
import { EditorRoom } from './editor-room';
import { tellNotKept } from './not-kept';

interface WordsEntryProps {
  label: string;
  text: string;
  /** `text` is missing when it's to stay as it was. `byKeys`: by a key and not by leaving. */
  onDone(text: string | undefined, byKeys: boolean): void;
  /** The text so far, because something else is about to happen to the sheet. */
  onCommit(text: string): void;
}

/** A place to type words over many lines, with the focus in it. Leaving it, Done or Ctrl+Enter keeps them; Escape leaves them as they were and offers the draft back. */
export function WordsEntry(props: WordsEntryProps) {
  const sheet = useSheet();
  const ready = useSignal(editorMaker() !== undefined);
  const draft = useRef(props.text);
  const kept = useRef(props.text);
  const latest = useRef(props);
  latest.current = props;
  const left = useRef(false);

  useEffect(() => {
    if (!ready.value) {
      fetchEditor().then(
        () => {
          ready.value = !left.current;
        },
        () => {},
      );
    }
    return sheet.typing(() => {
      if (draft.current === kept.current) return;
      kept.current = draft.current;
      latest.current.onCommit(draft.current);
    });
  }, []);

  const leave = (text: string | undefined, byKeys: boolean): void => {
    if (left.current) return;
    left.current = true;
    const changed = text !== undefined && text !== kept.current;
    const typed = draft.current;
    if (text === undefined && typed !== kept.current)
      tellNotKept(sheet, typed, (back) => latest.current.onCommit(back));
    // This edit is the last: nothing of the draft is left to be settled before it.
    draft.current = text ?? kept.current;
    kept.current = draft.current;
    props.onDone(changed ? text : undefined, byKeys);
  };

  if (ready.value) {
    return (
      <>
        <EditorRoom
          class="note-text"
          grows={false}
          attributes={{ 'aria-label': props.label }}
          text={props.text}
          opening={{ draft: draft.current, selection: { from: draft.current.length, to: draft.current.length } }}
          onDraft={(text) => {
            draft.current = text;
          }}
          onLeave={leave}
          onUndoBeyond={sheet.undo}
        />
        {/* Pressing it leaves the words, and that keeps them. */}
        <button type="button" class="word">
          Done
        </button>
      </>
    );
  }
  return (
    <textarea
      class="note-text"
      aria-label={props.label}
      rows={Math.max(4, props.text.split('\n').length + 1)}
      ref={(field) => field?.focus()}
      defaultValue={props.text}
      onInput={(event) => {
        draft.current = event.currentTarget.value;
      }}
      onKeyDown={(event) => {
        if (event.key === 'Escape') leave(undefined, true);
        if (event.key === 'Enter' && (event.ctrlKey || event.metaKey)) leave(draft.current, true);
      }}
      onBlur={() => {
        if (!ready.value) leave(draft.current, false);
      }}
    />
  );
}
