import { type PartsCell, readCsvLines } from '../../../../engine/index';
import { useSheet } from '../../../store/context';
import type { PasteColumn } from '../../shared/paste-columns';
import { PasteFaults } from '../../shared/paste-faults';
import type { Separators } from '../../shared/separators';
import { addingParts } from '../edits';
import { takenNames } from '../taken';
import { columnFaults, proposedColumns } from './columns';
import { knownNames } from './known-names';
import { PastedTable } from './pasted-table';
import { readParts } from './read-parts';

interface Props {
  readonly cell: PartsCell;
  readonly text: string;
  readonly separators: Separators;
  /** Columns as a person matched them; undefined: as their headings say. */
  readonly matched: readonly PasteColumn[] | undefined;
  onMatch(columns: readonly PasteColumn[]): void;
  onAdded(count: number): void;
}

/** Columns matched, what comes of the rows, what is wrong with which line; and the press that takes all of them, or none. */
export function PastedRows({ cell, text, separators, matched, onMatch, onAdded }: Props) {
  const sheet = useSheet();
  const { between, decimal } = separators;
  if (!between || !decimal) return null;
  const lines = readable(() => readCsvLines(text, between));
  if (typeof lines === 'string') {
    return (
      <p class="fault-words" role="alert">
        The text can’t be read: {lines}. Close the quote, or leave the quotes out.
      </p>
    );
  }
  const [heading, ...rest] = lines;
  if (!heading || rest.length === 0) {
    return <p class="aside">There are no rows yet. The first line names the columns, each line below it is a part.</p>;
  }
  const columns = matched ?? proposedColumns(heading.fields, sheet.units());
  const wrong = columnFaults(columns);
  const reading = { decimal, units: sheet.units(), known: knownNames(sheet) };
  const read = readParts(text, between, columns, reading, takenNames(sheet, cell));
  const count = read.parts.length;
  const there = new Set(cell.rows.map(({ title }) => title.trim().toLowerCase()));
  const twice = read.parts.map(({ title }) => title).filter((title) => there.has(title.toLowerCase()));
  const told = [
    ...wrong,
    ...(wrong.length > 0 ? [] : read.faults.map(({ line, message }) => `Line ${line}: ${message}`)),
  ];
  return (
    <>
      <PastedTable columns={columns} lines={rest} parts={wrong.length > 0 ? [] : read.parts} onMatch={onMatch} />
      <PasteFaults told={told} />
      {twice.length > 0 && <p class="aside">{twiceWords(twice)}</p>}
      {read.totals > 0 && <p class="aside">The totals at the end of a saved table are left out.</p>}
      <button
        type="button"
        class="word"
        disabled={told.length > 0 || count === 0}
        onClick={() => {
          sheet.edit((document) => addingParts(document, cell, read.parts), 'parts that were pasted');
          onAdded(count);
        }}
      >
        {count === 1 ? 'Add this part' : `Add these ${count} parts`}
      </button>
    </>
  );
}

/** Parts that the table has already, by their titles: they may be meant, and may be a slip. */
function twiceWords(titles: readonly string[]): string {
  const said = titles.slice(0, 3).map((title) => `“${title}”`);
  const more = titles.length > 3 ? ` and ${titles.length - 3} more` : '';
  const [are, stand] = titles.length === 1 ? ['is', 'stands'] : ['are', 'stand'];
  return `${said.join(', ')}${more} ${are} in the table already, and ${stand} there twice if taken.`;
}

function readable<T>(work: () => T): T | string {
  try {
    return work();
  } catch (error) {
    return (error as Error).message;
  }
}
