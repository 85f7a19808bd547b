import { useState } from 'preact/hooks';
import { along } from '../../controls/along';
import { type ChosenSeparators, type Separators, seenIn } from './separators';
import { SeparatorsPick } from './separators-pick';

interface PasteProps {
  readonly id: string;
  readonly title: string;
  /** What may be pasted. */
  readonly label: string;
  readonly rows: number;
  readonly word: string;
  /** It is a table: what parts its fields is shown and chosen. */
  readonly reads?: true;
  /** Takes the text, and says what was done or what keeps it from being taken. */
  onTake(text: string, separators: ChosenSeparators): { readonly ok: boolean; readonly message: string };
}

/** Room to paste in. What can't be taken stays there with the sentence that says why. */
export function PasteRoom({ id, title, label, rows, word, reads, onTake }: PasteProps) {
  const [text, setText] = useState('');
  const [said, setSaid] = useState('');
  const [chosen, choose] = useState<Partial<Separators>>({});
  const { between, decimal }: Separators = reads ? { ...seenIn(text), ...chosen } : { between: ',', decimal: '.' };
  const blank = text.trim() === '';
  const put = (next: string): void => {
    setText(next);
    choose({});
  };
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
        onInput={({ currentTarget }) => put(currentTarget.value)}
      />
      {reads && !blank && <SeparatorsPick id={id} text={text} picked={{ between, decimal }} onPick={choose} />}
      <p id={`${id}-said`} role="status">
        {said}
      </p>
      <button
        type="button"
        class="word"
        disabled={blank || !between || !decimal}
        onClick={() => {
          const { ok, message } = onTake(text, { between: between!, decimal: decimal! });
          setSaid(message);
          if (ok) put('');
        }}
      >
        {word}
      </button>
    </details>
  );
}
