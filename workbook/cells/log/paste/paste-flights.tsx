import { useState } from 'preact/hooks';
import type { LogCell } from '../../../../engine/index';
import { along } from '../../../controls/along';
import { type Separators, seenIn } from '../../shared/separators';
import { SeparatorsPick } from '../../shared/separators-pick';
import type { FlightChoices } from './choices';
import { PastedFlightRows } from './pasted-flights';

/** Flights from elsewhere: how they are read is shown and chosen before anything of them comes into the log. */
export function PasteFlights({ cell }: { cell: LogCell }) {
  const [text, setText] = useState('');
  const [separators, choose] = useState<Partial<Separators>>({});
  const [choices, decide] = useState<FlightChoices>({});
  const [said, say] = useState('');
  const id = `${cell.id}-paste`;
  const seen: Separators = { ...seenIn(text), ...separators };
  const take = (next: string): void => {
    setText(next);
    choose({});
    decide({});
    say('');
  };
  return (
    <details class="set-up paste-flights">
      <summary {...along()}>Paste flights, or take them from a CSV file</summary>
      <label class="set-up-word" for={id}>
        Rows copied from a table, or separated values, one flight a line: day, laps, time, pull …
      </label>
      <textarea
        id={id}
        class="note-text"
        rows={4}
        spellcheck={false}
        value={text}
        onInput={({ currentTarget }) => take(currentTarget.value)}
      />
      <label class="paste-file">
        Or a file:{' '}
        <input
          type="file"
          accept=".csv,.txt,.tsv,text/csv,text/plain"
          onChange={({ currentTarget }) => {
            const [file] = currentTarget.files ?? [];
            if (file) void file.text().then(take);
          }}
        />
      </label>
      {text.trim() !== '' && <SeparatorsPick id={id} text={text} picked={seen} onPick={choose} />}
      {text.trim() !== '' && (
        <PastedFlightRows
          cell={cell}
          text={text}
          separators={seen}
          choices={choices}
          onChoose={(next) => decide({ ...choices, ...next })}
          onAdded={(count) => {
            take('');
            say(count === 1 ? 'One flight was added.' : `${count} flights were added.`);
          }}
        />
      )}
      <p id={`${id}-said`} role="status">
        {said}
      </p>
    </details>
  );
}
