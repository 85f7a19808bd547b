import { useState } from 'preact/hooks';
import type { LogCell } from '../../../../engine/index';
import { PasteForm } from '../../shared/paste-form';
import type { FlightChoices } from './choices';
import { PastedFlightRows } from './pasted-flights';

/** Flights from elsewhere. */
export function PasteFlights({ cell }: { cell: LogCell }) {
  const [choices, decide] = useState<FlightChoices>({});
  return (
    <PasteForm
      id={`${cell.id}-paste`}
      class="paste-flights"
      title="Paste flights, or take them from a CSV file"
      about="Rows copied from a table, or separated values, one flight a line: day, laps, time, pull …"
      onOther={() => decide({})}
    >
      {({ text, separators, done }) => (
        <PastedFlightRows
          cell={cell}
          text={text}
          separators={separators}
          choices={choices}
          onChoose={(next) => decide({ ...choices, ...next })}
          onAdded={(count) => done(count === 1 ? 'One flight was added.' : `${count} flights were added.`)}
        />
      )}
    </PasteForm>
  );
}
