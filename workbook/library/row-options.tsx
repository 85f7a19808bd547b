import type { RowDescription, TableDescription } from '../../engine/index';
import { useSheet } from '../store/context';
import { rowsByGroup } from './told';

/** The rows of a table as the lines of a list: own ones first, then the library's by their groups; `but` leaves some out. */
export function RowOptions(props: {
  table: TableDescription;
  but?: (row: { readonly name: string }) => boolean;
  words?: (row: RowDescription) => string;
}) {
  const { table, but, words } = props;
  const all = useSheet()
    .part('rows')
    .filter((row) => row.table === table.name);
  const own = all.filter((row) => !but?.(row));
  // An own row stands before the library's of the same name.
  const library = table.rows.filter((row) => !but?.(row) && !all.some((mine) => mine.name === row.name));
  return (
    <>
      {own.length > 0 && (
        <optgroup label="own, of this design">
          {own.map((row) => (
            <option key={row.name} value={row.name}>
              {row.title}
            </option>
          ))}
        </optgroup>
      )}
      {[...rowsByGroup(library)].map(([group, rows]) => (
        <optgroup key={group} label={group === '' ? 'library' : `library: ${group}`}>
          {rows.map((row) => (
            <option key={row.name} value={row.name}>
              {words ? words(row) : row.title}
            </option>
          ))}
        </optgroup>
      ))}
    </>
  );
}
