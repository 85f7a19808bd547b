import { type Column, isOptionColumn, isWordColumn, type LibraryRow, type LibraryTable } from '../library/index';
import { type Dimension, ONE } from '../units/index';

/** A number of the library and what a person reads of it. */
export interface Given {
  readonly value: number;
  readonly told: ColumnTold & { readonly doc: string };
}

interface ColumnTold {
  readonly title: string;
  readonly symbol: string;
  readonly dimension: Dimension;
  readonly unit: string;
  readonly tradeUnit?: string;
  /** The value is the index of one of these. */
  readonly options?: readonly string[];
  readonly mayBeBlank?: boolean;
  readonly seldom?: boolean;
}

/** A column that gives a number or an option, as a name that a formula can read. */
export interface ValueColumn extends ColumnTold {
  readonly name: string;
}

/** The columns of a table that formulas can read: all but words. */
export function valueColumns({ columns }: Pick<LibraryTable, 'columns'>): ValueColumn[] {
  return Object.entries<Column>(columns).flatMap(([name, column]): ValueColumn[] => {
    if (isWordColumn(column)) return [];
    if (isOptionColumn(column)) {
      return [{ name, title: column.title, symbol: '', dimension: ONE, unit: '', options: column.option }];
    }
    return [{ name, ...column }];
  });
}

const known = new WeakMap<readonly LibraryTable[], ReadonlyMap<string, Given>>();

/** Every number that a document may name without having it: `balsa_medium.density`, `dope_clear.areal_mass`. */
export function libraryNumbers(tables: readonly LibraryTable[]): ReadonlyMap<string, Given> {
  const numbers = known.get(tables) ?? numbersOf(tables);
  known.set(tables, numbers);
  return numbers;
}

function numbersOf(tables: readonly LibraryTable[]): ReadonlyMap<string, Given> {
  const numbers = new Map<string, Given>();
  for (const table of tables) {
    const columns = valueColumns(table);
    for (const row of table.rows) {
      for (const { name, ...told } of columns) {
        const title = `${row.title}: ${told.title.toLowerCase()}`;
        numbers.set(`${row.name}.${name}`, { value: row.values[name]!, told: { ...told, title, doc: sourceOf(row) } });
      }
    }
  }
  return numbers;
}

const sourceOf = ({ source, memory }: LibraryRow): string => (memory ? `${source} (recalled, not looked up)` : source);
