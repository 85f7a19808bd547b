import { capital, formatNumber, fromSI, type PartsCell } from '../../../engine/index';
import { useSheet } from '../../store/context';

/** Every part with what it weighs and where it is, and what that comes to: all on one page as far as it can be read. */
export function WeightStatement() {
  const tables = useSheet().cells.value.filter((cell): cell is PartsCell => cell.kind === 'parts');
  if (tables.length === 0) return <p>This design has no table of weight and balance.</p>;
  return tables.map((cell) => <Statement key={cell.id} cell={cell} />);
}

const COLUMNS = [
  ['mass', 'Weight'],
  ['x', 'Station'],
  ['y', 'Outboard'],
  ['z', 'Height'],
  ['moment', 'About the CG'],
] as const;

/** Height of the page for its rows, mm, and the size of type that a row needs of its own height. */
const ROOM = 205;
const LARGEST = 9;
const SMALLEST = 7;
const POINTS_PER_MM = 72 / 25.4;
const LINE = 1.35;
/** Rows beside those of the parts: head, sums, and what stands over the table. */
const MORE_ROWS = 8;

/** Type size at which so many rows stand on one page, pt. */
export const statementSize = (rows: number): number =>
  Math.round(10 * Math.max(SMALLEST, Math.min(LARGEST, (ROOM / (rows + MORE_ROWS) / LINE) * POINTS_PER_MM))) / 10;

function Statement({ cell }: { cell: PartsCell }) {
  const sheet = useSheet();
  const { name, rows, title } = cell;
  const unit = (column: string): string => sheet.name(`${name}.${rows[0]?.name}.${column}`)?.unit ?? '';
  // In the unit at the head of its column, and by its sign: inboard, forward and down are less than nothing.
  const number = (path: string): string => {
    const info = sheet.name(path);
    const value = sheet.value(path);
    return info && Number.isFinite(value) ? formatNumber(fromSI(value, info.unit)) : '–';
  };
  const fuelled = rows.some(({ fuel }) => fuel);
  const sums = fuelled
    ? ([
        ['_empty', 'Tank empty'],
        ['_half', 'Tank half full'],
        ['_full', 'Tank full'],
      ] as const)
    : ([['', 'All-up']] as const);
  return (
    <div class="weight-statement" style={{ fontSize: `${statementSize(rows.length + sums.length)}pt` }}>
      <h2>
        Weight statement: {sheet.document.value.title || 'Untitled design'}
        {title === '' ? '' : `, ${title}`}
      </h2>
      <p>
        Stations from the leading edge of the wing root, aft positive; outboard and height positive, from the centreline
        and the reference line; moments about the CG as set, aft positive. Weighed:{' '}
        {sheet.shown(`${name}.weighed_share`)} of the weight.
      </p>
      <table>
        <thead>
          <tr>
            <th scope="col">Part</th>
            {COLUMNS.map(([column, word]) => (
              <th scope="col" key={column}>
                {word}, {unit(column)}
              </th>
            ))}
            <th scope="col">From</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.name}>
              <th scope="row">{capital(row.title)}</th>
              {COLUMNS.map(([column]) => (
                <td key={column}>{number(`${name}.${row.name}.${column}`)}</td>
              ))}
              <td>{(row.fields.weighed ?? '').trim() === '' ? 'estimate' : 'scale'}</td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          {sums.map(([ending, words]) => (
            <tr key={words}>
              <th scope="row">{words}</th>
              {COLUMNS.map(([column]) => (
                <td key={column}>{column === 'moment' ? '' : number(`${name}.${column}${ending}`)}</td>
              ))}
              <td />
            </tr>
          ))}
        </tfoot>
      </table>
    </div>
  );
}
