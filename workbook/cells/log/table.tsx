import { type LogCell, type LogRow, logRowPath } from '../../../engine/index';
import { Menu } from '../../controls/menu';
import { TextEntry } from '../../controls/text-entry';
import { useSheet } from '../../store/context';
import { moved } from '../rows/index';
import { RowFaults } from '../shared/row-faults';
import { withLogRow, withoutLogRow, withRowBelow } from './edits';

/** One row a flight; a table that scrolls sideways where there is no room. */
export function LogTable({ cell }: { cell: LogCell }) {
  const sheet = useSheet();
  const heading = (of: string): string => {
    const { title = of, unit = '', suffix = '' } = sheet.name(of) ?? {};
    return unit || suffix ? `${title}, ${suffix || unit}` : title;
  };
  if (cell.rows.length === 0) return <p class="aside">No flight yet.</p>;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keys.
    <section class="log-room" tabIndex={0} aria-label={`Flights of ${cell.title}`}>
      <table>
        <thead>
          <tr>
            <th scope="col">Flight</th>
            <th scope="col">Laps</th>
            <th scope="col">Time, s</th>
            {cell.columns.map((column) => (
              <th key={column.name} scope="col">
                {heading(column.of)}
              </th>
            ))}
            <th scope="col" class="log-note">
              Note
            </th>
          </tr>
        </thead>
        <tbody>
          {cell.rows.map((row, k) => (
            // A row is known by its place: its texts have paths by it.
            <Row key={k} cell={cell} row={row} k={k} />
          ))}
        </tbody>
      </table>
    </section>
  );
}

function Row({ cell, row, k }: { cell: LogCell; row: LogRow; k: number }) {
  const sheet = useSheet();
  const path = logRowPath(cell, k);
  const said = row.label === '' ? `row ${k + 1}` : row.label;
  const isSet = (of: string): boolean => sheet.name(of)?.settable ?? false;
  const numbers = ['laps', 'time', ...cell.columns.map(({ name }) => name)];
  const columnOf = (name: string): string | undefined => cell.columns.find((column) => column.name === name)?.of;
  const words = { laps: 'laps timed', time: 'time' } as Readonly<Record<string, string>>;
  const labelOf = (name: string): string => {
    const of = columnOf(name);
    return `${of === undefined ? words[name] : (sheet.name(of)?.title ?? of)}, ${said}`;
  };
  const textOf = (name: string): string => (name === 'laps' || name === 'time' ? row[name] : (row.values[name] ?? ''));
  const word = (key: 'label' | 'note', label: string) => (
    <TextEntry
      path={`${path}#${key}`}
      label={`${label}, ${said}`}
      text={row[key]}
      shown={row[key]}
      onCommit={(text) => sheet.changeCell(withLogRow(cell, k, { ...row, [key]: text }))}
      onUndoBeyond={sheet.undo}
    />
  );
  const faulty = numbers.filter((name) => sheet.faultAt(`${path}.${name}`));
  return (
    <>
      <tr>
        <th scope="row">
          <span class="log-name">
            {word('label', 'date or number of the flight')}
            <Menu
              along="word"
              class="word quiet row-word"
              label={`${said}: commands`}
              commands={() => [
                { words: 'Add one below', run: () => sheet.changeCell(withRowBelow(cell, k, isSet)) },
                {
                  words: 'Move up',
                  disabled: k === 0,
                  run: () => sheet.changeCell({ ...cell, rows: moved(cell.rows, k, -1) }),
                },
                {
                  words: 'Move down',
                  disabled: k === cell.rows.length - 1,
                  run: () => sheet.changeCell({ ...cell, rows: moved(cell.rows, k, 1) }),
                },
                { words: 'Remove', run: () => sheet.changeCell(withoutLogRow(cell, k)) },
              ]}
            >
              More
            </Menu>
          </span>
        </th>
        {numbers.map((name) => (
          <td key={name} class="log-number">
            <TextEntry
              path={`${path}.${name}`}
              label={labelOf(name)}
              text={textOf(name)}
              shown={textOf(name) === '' ? '' : sheet.entry(`${path}.${name}`)}
              placeholder={name === 'laps' ? '1' : '–'}
              fault={sheet.faultAt(`${path}.${name}`)}
              faultElsewhere
              onCommit={(text) => sheet.setText(`${path}.${name}`, text)}
              onUndoBeyond={sheet.undo}
            />
          </td>
        ))}
        <td class="log-note">{word('note', 'note')}</td>
      </tr>
      {faulty.length > 0 && (
        <tr>
          <td colSpan={numbers.length + 2}>
            <RowFaults paths={faulty.map((name) => `${path}.${name}`)} />
          </td>
        </tr>
      )}
    </>
  );
}
