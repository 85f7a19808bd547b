import { useState } from 'preact/hooks';
import { along } from '../../controls/along';

interface PasteProps {
  readonly id: string;
  readonly title: string;
  /** What may be pasted. */
  readonly label: string;
  readonly rows: number;
  readonly word: string;
  /** Takes the text, and says what was done or what keeps it from being taken. */
  onTake(text: string): { readonly ok: boolean; readonly message: string };
}

/** Room to paste in. What can't be taken stays there with the sentence that says why. */
export function PasteRoom({ id, title, label, rows, word, onTake }: PasteProps) {
  const [text, setText] = useState('');
  const [said, setSaid] = useState('');
  const blank = text.trim() === '';
  return (
    <details class="set-up">
      <summary {...along()}>{title}</summary>
      <label class="set-up-word" for={id}>
        {label}
      </label>
      <textarea
        id={id}
        class="note-text"
        rows={rows}
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
        disabled={blank}
        onClick={() => {
          const { ok, message } = onTake(text);
          setSaid(message);
          if (ok) setText('');
        }}
      >
        {word}
      </button>
    </details>
  );
}
