import { useState } from 'preact/hooks';
import type { PartsCell } from '../../../../engine/index';
import { along } from '../../../controls/along';
import type { PasteColumn } from '../../shared/paste-columns';
import { type Separators, seenIn } from '../../shared/separators';
import { SeparatorsPick } from '../../shared/separators-pick';
import { PastedRows } from './pasted-rows';

/** A table of parts from elsewhere: how it is read is shown and chosen before anything of it comes into the design. */
export function PasteParts({ cell }: { cell: PartsCell }) {
  const [text, setText] = useState('');
  const [chosen, choose] = useState<Partial<Separators>>({});
  const [matched, match] = useState<readonly PasteColumn[] | undefined>(undefined);
  const [said, say] = useState('');
  const id = `${cell.id}-paste-parts`;
  const separators: Separators = { ...seenIn(text), ...chosen };
  const take = (next: string): void => {
    setText(next);
    choose({});
    match(undefined);
    say('');
  };
  return (
    <details class="set-up paste-parts">
      <summary {...along()}>Paste parts, or take them from a CSV file</summary>
      <label class="set-up-word" for={id}>
        Rows copied from a table, or comma-separated values. The first line names the columns: part, quantity, mass, x …
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
            if (next.between !== separators.between) match(undefined);
            choose(next);
          }}
        />
      )}
      {text.trim() !== '' && (
        <PastedRows
          cell={cell}
          text={text}
          separators={separators}
          matched={matched}
          onMatch={match}
          onAdded={(count) => {
            take('');
            say(`${count === 1 ? 'One part was' : `${count} parts were`} added. Undo takes all of it back.`);
          }}
        />
      )}
      <p role="status">{said}</p>
    </details>
  );
}
