import { useState } from 'preact/hooks';
import { along } from '../../controls/along';
import { useSheet } from '../../store/context';

/** Variants that were copied from another design. What can't be taken stays in the room with the sentence that says why. */
export function AddCopied({ id }: { id: string }) {
  const sheet = useSheet();
  const [text, setText] = useState('');
  const [said, setSaid] = useState('');
  return (
    <details class="set-up">
      <summary {...along()}>Add copied variants</summary>
      <label class="set-up-word" for={`${id}-paste`}>
        Paste what “Copy” at a variant gave, of this design or another
      </label>
      <textarea
        id={`${id}-paste`}
        class="note-text"
        rows={3}
        spellcheck={false}
        value={text}
        aria-describedby={`${id}-said`}
        onInput={({ currentTarget }) => setText(currentTarget.value)}
      />
      <p id={`${id}-said`} role="status">
        {said}
      </p>
      <button
        type="button"
        class="word"
        disabled={text.trim() === ''}
        onClick={() => {
          const answer = sheet.addCopied(text);
          setSaid(answer.message);
          if (answer.ok) setText('');
        }}
      >
        Add them
      </button>
    </details>
  );
}
