import { type LogCell, MOST_LOG_ROWS, readCsvLines } from '../../../../engine/index';
import { useSheet } from '../../../store/context';
import { ColumnsTable } from '../../shared/columns-table';
import { PasteFaults } from '../../shared/paste-faults';
import type { Separators } from '../../shared/separators';
import { Tick } from '../../shared/tick';
import type { FlightChoices } from './choices';
import { orderIn } from './day';
import { readFlights } from './read-flights';
import { AGAIN, isHeading, proposedByContent, proposedByHeading, targetsOf } from './targets';

interface Props {
  readonly cell: LogCell;
  readonly text: string;
  readonly separators: Separators;
  readonly choices: FlightChoices;
  onChoose(choices: FlightChoices): void;
  onAdded(count: number): void;
}

/** Columns matched, what is wrong with which line, and the press that takes all flights, or none. */
export function PastedFlightRows({ cell, text, separators, choices, onChoose, onAdded }: Props) {
  const sheet = useSheet();
  const { between, decimal } = separators;
  if (!decimal || !between) return null;
  let lines: ReturnType<typeof readCsvLines>;
  try {
    lines = readCsvLines(text, between);
  } catch (error) {
    return (
      <p class="fault-words" role="alert">
        The text can’t be read: {(error as Error).message}. Close the quote, or leave the quotes out.
      </p>
    );
  }
  const [first] = lines;
  if (!first) return null;
  const targets = targetsOf(cell, sheet.name);
  const byHeading = proposedByHeading(first.fields, targets, sheet.units());
  const headed = choices.headed ?? isHeading(first.fields, byHeading);
  const flights = headed ? lines.slice(1) : lines;
  const columns = choices.matched ?? (headed ? byHeading : proposedByContent(flights.map(({ fields }) => fields)));
  const days = columns.findIndex(({ to }) => to === 'date');
  const shown = days < 0 ? 'day' : orderIn(flights.map(({ fields }) => fields[days] ?? ''));
  const order = choices.order ?? shown;
  const read = readFlights(flights, { columns, targets, decimal, order, units: sheet.units() });
  const count = read.rows.length;
  const twice = targets.find(({ key }) => !AGAIN.has(key) && columns.filter(({ to }) => to === key).length > 1);
  const told = [
    ...(columns.every(({ to }) => to === '') ? ['No column is matched. Say above what the columns are.'] : []),
    ...(twice ? [`Two columns are matched to ${twice.title}. Leave one of them out.`] : []),
    ...(cell.rows.length + count > MOST_LOG_ROWS
      ? [`That would make ${cell.rows.length + count} rows. At most ${MOST_LOG_ROWS} are allowed in one log.`]
      : []),
    ...read.faults.map(({ line, message }) => `Line ${line}: ${message}`),
  ];
  return (
    <>
      <Tick on={headed} onChange={(next) => onChoose({ headed: next, matched: undefined })}>
        The first line names the columns
      </Tick>
      {days >= 0 && shown === undefined && (
        <fieldset class="part-shapes">
          <legend class="set-up-word">Days like {flights[0]?.fields[days]}</legend>
          {(['day', 'month'] as const).map((each) => (
            <label key={each} class={order === each ? 'picked' : ''}>
              <input
                type="radio"
                name={`${cell.id}-paste-order`}
                checked={order === each}
                onChange={() => onChoose({ order: each })}
              />
              {each} first
            </label>
          ))}
        </fieldset>
      )}
      <ColumnsTable
        columns={columns}
        lines={flights}
        targets={targets}
        units={sheet.units()}
        onMatch={(matched) => onChoose({ matched })}
      />
      <PasteFaults told={told} />
      <button
        type="button"
        class="word"
        disabled={told.length > 0 || count === 0}
        onClick={() => {
          sheet.changeCell({ ...cell, rows: [...cell.rows, ...read.rows] });
          onAdded(count);
        }}
      >
        {count === 1 ? 'Add this flight' : `Add these ${count} flights`}
      </button>
    </>
  );
}
