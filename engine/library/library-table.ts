import type { Dimension } from '../units/index';
import { type RowReader, readTable, type Sourced } from './table';

/** A number that every row gives; formulas reach it as `ROW.NAME`. */
interface NumberColumn {
  readonly title: string;
  readonly symbol: string;
  readonly dimension: Dimension;
  /** Unit in which it is shown and in which a bare number is read. */
  readonly unit: string;
  readonly tradeUnit?: string;
  /** A row may leave it out: nobody has published or measured it. A field that names it then has its own default. */
  readonly mayBeBlank?: true;
  /** Few rows have it: a blank one says nothing. */
  readonly seldom?: true;
}

/** One of a list that every row gives; a field of a block that takes the same list can name it. */
export interface OptionColumn {
  readonly title: string;
  readonly option: readonly string[];
}

/** Words to be read beside a row. */
export interface WordColumn {
  readonly title: string;
  readonly words: true;
  /** The only ones that are allowed. */
  readonly among?: readonly string[];
}

export type Column = NumberColumn | OptionColumn | WordColumn;

export const isOptionColumn = (column: Column): column is OptionColumn => 'option' in column;
export const isWordColumn = (column: Column): column is WordColumn => 'words' in column;

export interface LibraryRow extends Sourced {
  /** Column → SI value, or index of an option; NaN: not known. */
  readonly values: Readonly<Record<string, number>>;
  readonly words: Readonly<Record<string, string>>;
}

/** What is said of a table once; its form, names, own rows, reference and listing are made from it. */
export interface TableTold {
  /** Its name in a file. */
  readonly name: string;
  readonly title: string;
  /** One of its rows, in a sentence: "line kind". */
  readonly one: string;
  readonly doc: string;
  /** Stands wherever a row is picked. */
  readonly caution?: string;
  /** Column whose values make the groups of a list. */
  readonly group?: string;
  /** Role of the block that has fields of the same names. */
  readonly feeds?: string;
  readonly columns: Readonly<Record<string, Column>>;
}

export interface LibraryTable extends TableTold {
  readonly rows: readonly LibraryRow[];
}

/** A table of a data file. Refuses, naming file and line, what `readTable` refuses and what its columns do not allow. */
export function libraryTable<T extends TableTold>(told: T, file: string, text: string): T & LibraryTable {
  const columns = Object.entries<Column>(told.columns);
  const rows = readTable(file, text, (row): LibraryRow => {
    const values: Record<string, number> = {};
    const words: Record<string, string> = {};
    for (const [name, column] of columns) {
      if (isWordColumn(column)) words[name] = readWords(row, name, column);
      else if (isOptionColumn(column)) values[name] = column.option.indexOf(row.oneOf(name, column.option));
      else values[name] = row.quantity(name, column.dimension, column.mayBeBlank && Number.NaN);
    }
    const { name, title, inchTitle, source, memory } = row;
    return { name, title, ...(inchTitle ? { inchTitle } : {}), source, memory, values, words };
  });
  return { ...told, rows };
}

const readWords = (row: RowReader, name: string, { among }: WordColumn): string =>
  among ? row.oneOf(name, among) : row.text(name);

/** Tables as one library. Refuses a row whose name a row of another table has: formulas could not tell them apart. */
export function libraryOf<T extends LibraryTable>(tables: readonly T[]): readonly T[] {
  const seen = new Map<string, string>();
  for (const table of tables) {
    for (const { name } of table.rows) {
      const other = seen.get(name);
      if (other !== undefined) {
        throw new RangeError(
          `${table.name}: the row "${name}" has the name of a row of ${other}; every row of the library needs one of its own`,
        );
      }
      seen.set(name, table.name);
    }
  }
  return tables;
}
