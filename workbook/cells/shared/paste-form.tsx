import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { along } from '../../controls/along';
import { type Separators, seenIn } from './separators';
import { SeparatorsPick } from './separators-pick';

/** A text that was pasted or read from a file, and how its fields are told apart. */
interface Pasted {
  readonly text: string;
  readonly separators: Separators;
  /** Forgets the text, which has been taken, and says so. */
  done(said: string): void;
}

interface Props {
  readonly id: string;
  readonly class: string;
  readonly title: string;
  /** What is expected, over the entry. */
  readonly about: string;
  /** Another text, or another separator between its fields: what was chosen for the one before no longer holds. */
  onOther(): void;
  children(pasted: Pasted): ComponentChildren;
}

/** A table from elsewhere: how it is read is shown and chosen before anything of it comes into the design. */
export function PasteForm({ id, title, about, onOther, children, ...rest }: Props) {
  const [text, setText] = useState('');
  const [chosen, choose] = useState<Partial<Separators>>({});
  const [said, say] = useState('');
  const separators: Separators = { ...seenIn(text), ...chosen };
  const take = (next: string): void => {
    setText(next);
    choose({});
    onOther();
    say('');
  };
  const done = (words: string): void => {
    take('');
    say(words);
  };
  return (
    <details class={`set-up ${rest.class}`}>
      <summary {...along()}>{title}</summary>
      <label class="set-up-word" for={id}>
        {about}
      </label>
      <textarea
        id={id}
        class="note-text"
        rows={5}
        spellcheck={false}
        value={text}
        onInput={({ currentTarget }) => take(currentTarget.value)}
      />
      <label class="paste-file">
        Or a file:{' '}
        <input
          type="file"
          accept=".csv,.tsv,.txt,text/csv,text/plain"
          onChange={({ currentTarget }) => {
            const file = currentTarget.files?.[0];
            currentTarget.value = '';
            if (file) void file.text().then(take);
          }}
        />
      </label>
      {text.trim() !== '' && (
        <SeparatorsPick
          id={id}
          text={text}
          picked={separators}
          onPick={(next) => {
            if (next.between !== separators.between) onOther();
            choose(next);
          }}
        />
      )}
      {text.trim() !== '' && children({ text, separators, done })}
      <p role="status">{said}</p>
    </details>
  );
}
