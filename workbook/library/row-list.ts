import type { OwnRow, RowDescription } from '../../engine/index';
import type { PickOption } from '../controls/pick/index';

/** How the rows of a table stand in a list to pick from. */
export interface RowListing {
  /** Leaves some out. */
  readonly but?: (name: string) => boolean;
  /** What a row of the library is called, where its title doesn't say enough. */
  readonly words?: (row: RowDescription) => string;
  /** A number that it gives, to be seen and found by. */
  readonly detail?: (row: RowDescription) => string | undefined;
}

/** Rows to pick from: own ones first, then the library's by their groups. An own row takes the place of the library's of its name. */
export function rowList(
  own: readonly OwnRow[],
  library: readonly RowDescription[],
  { but = () => false, words = ({ title }) => title, detail = () => undefined }: RowListing = {},
): readonly PickOption[] {
  const mine = own.map(({ name, title }) => ({ value: name, title, group: 'own, of this design' }));
  const rest = library
    .filter(({ name }) => !own.some((row) => row.name === name))
    .map((row) => {
      const told = detail(row);
      const group = row.group === '' ? 'library' : `library: ${row.group}`;
      return { value: row.name, title: words(row), group, ...(told === undefined ? {} : { detail: told }) };
    });
  return [...mine, ...rest].filter(({ value }) => !but(value));
}
