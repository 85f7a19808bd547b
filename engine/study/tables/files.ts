import { csvLine } from '../../library/csv';
import type { NameInfo } from '../../terms/index';
import { entry, heading, inUnit, REASON_HEADING } from './csv';
import type { Shown } from './table';
import type { TableFormat } from './told';

type Names = ReadonlyMap<string, NameInfo>;
type Piece = string | Uint8Array<ArrayBuffer>;

/** Rows of a file that are made into one piece of text. */
const ROWS_A_PIECE = 10_000;

/** All rows that a view shows, as the pieces of a file. */
export const fileOf = (
  arquero: typeof import('arquero'),
  shown: Shown,
  names: Names,
  format: TableFormat,
): readonly Piece[] => (format === 'csv' ? csvOf(shown, names) : [arrowOf(arquero, shown, names)]);

function csvOf({ columns, index, reason }: Shown, names: Names): string[] {
  const infos = columns.map((column) => names.get(column.path));
  const head = [...columns.map((column, c) => heading(column, infos[c])), REASON_HEADING];
  const pieces = [csvLine(head)];
  for (let from = 0; from < index.length; from += ROWS_A_PIECE) {
    let piece = '';
    for (const place of index.subarray(from, from + ROWS_A_PIECE)) {
      piece += csvLine([...columns.map((column, c) => entry(infos[c], column.numbers[place]!)), reason(place)]);
    }
    pieces.push(piece);
  }
  return pieces;
}

/** A file of Apache Arrow: numbers as doubles, null where there is none; options and reasons as texts. */
function arrowOf({ table, toArrowIPC }: typeof import('arquero'), shown: Shown, names: Names): Uint8Array<ArrayBuffer> {
  const { columns, index, reason } = shown;
  const rows = Array.from(index);
  const made = columns.map((column): [string, unknown[]] => {
    const info = names.get(column.path);
    const { options, unit = '' } = info ?? {};
    const read = (place: number): unknown => {
      const si = column.numbers[place]!;
      return options ? (options[si] ?? null) : (inUnit(unit, si) ?? null);
    };
    return [heading(column, info), rows.map(read)];
  });
  const reasons: [string, unknown[]] = [REASON_HEADING, rows.map((place) => reason(place) || null)];
  return toArrowIPC(table([...made, reasons]), { format: 'file' }) as Uint8Array<ArrayBuffer>;
}
