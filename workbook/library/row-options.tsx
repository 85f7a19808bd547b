import type { RowDescription, TableDescription } from '../../engine/index';
import { rowsByGroup } from './told';

/** The rows of a table as the lines of a list, by their groups; `but` leaves some out. */
export function RowOptions(props: {
  table: TableDescription;
  but?: (row: RowDescription) => boolean;
  words?: (row: RowDescription) => string;
}) {
  const { table, but, words } = props;
  const groups = [...rowsByGroup(table.rows.filter((row) => !but?.(row)))];
  return (
    <>
      {groups.map(([group, rows]) => (
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
