import { capital, formatNumber, fromSI, type Part, type PartsCell } from '../../../engine/index';
import { useSheet } from '../../store/context';

/** Every part with what it weighs and where it is, and what that comes to: all on one page as far as it can be read. */
export function WeightStatement() {
  const tables = useSheet().cells.value.filter((cell): cell is PartsCell => cell.kind === 'parts');
  if (tables.length === 0) return <p>This design has no table of weight and balance.</p>;
  return tables.map((cell) => <Statement key={cell.id} cell={cell} />);
}

const COLUMNS = [
  ['mass', 'Weight', 'Weight'],
  ['x', 'Station', 'Station'],
  ['y', 'Outboard', 'Out'],
  ['z', 'Height', 'Height'],
  ['moment', 'About the CG', 'Moment'],
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

/** Rows that stand on one page, one below the other, in the smallest type. */
const MOST_ROWS = Math.floor((ROOM * POINTS_PER_MM) / (SMALLEST * LINE)) - MORE_ROWS;

/** How so many parts stand on paper: from where to where in each column, page by page, and in which type, pt. */
export function statementPages(parts: number, sums: number) {
  if (parts + sums <= MOST_ROWS) return { size: statementSize(parts + sums), pages: [[[0, parts]]] as const };
  const pages = Math.ceil(parts / (2 * (MOST_ROWS - sums)));
  const rows = Math.ceil(parts / (2 * pages));
  const places = Array.from({ length: pages }, (_, page) =>
    [2 * page, 2 * page + 1].map((column) => [column * rows, Math.min(parts, (column + 1) * rows)] as const),
  );
  return { size: SMALLEST, pages: places };
}

const isWeighed = ({ fields }: Part): boolean => (fields.weighed ?? '').trim() !== '';

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
  const { size, pages } = statementPages(rows.length, sums.length);
  // Two columns have no room for long words.
  const narrow = pages[0]!.length > 1;
  const of = `${sheet.document.value.title || 'Untitled design'}${title === '' ? '' : `, ${title}`}`;
  const head = (
    <thead>
      <tr>
        <th scope="col">Part</th>
        {COLUMNS.map(([column, word, short]) => (
          <th scope="col" key={column}>
            {narrow ? short : word}, {unit(column)}
          </th>
        ))}
        {!narrow && <th scope="col">From</th>}
      </tr>
    </thead>
  );
  const foot = (
    <tfoot>
      {sums.map(([ending, words]) => (
        <tr key={words}>
          <th scope="row">{words}</th>
          {COLUMNS.map(([column]) => (
            <td key={column}>{column === 'moment' ? '' : number(`${name}.${column}${ending}`)}</td>
          ))}
          {!narrow && <td />}
        </tr>
      ))}
    </tfoot>
  );
  const row = (part: Part) => (
    <tr key={part.name}>
      <th scope="row">
        {narrow && isWeighed(part) && '✓ '}
        {capital(part.title)}
      </th>
      {COLUMNS.map(([column]) => (
        <td key={column}>{number(`${name}.${part.name}.${column}`)}</td>
      ))}
      {!narrow && <td>{isWeighed(part) ? 'scale' : 'estimate'}</td>}
    </tr>
  );
  return pages.map((columns, page) => (
    <div class="weight-statement" key={page} style={{ fontSize: `${size}pt` }}>
      <h2>
        Weight statement: {of}
        {pages.length > 1 && `, page ${page + 1} of ${pages.length}`}
      </h2>
      <p>
        Stations from the leading edge of the wing root, aft positive; outboard and height positive, from the centreline
        and the reference line; moments about the CG as set, aft positive. Weighed:{' '}
        {sheet.shown(`${name}.weighed_share`)} of the weight{narrow ? ', each part with ✓.' : '.'}
      </p>
      <div class={narrow ? 'statement-columns narrow' : 'statement-columns'}>
        {columns.map(([from, to], k) => (
          <table key={from}>
            {head}
            <tbody>{rows.slice(from, to).map(row)}</tbody>
            {page === pages.length - 1 && k === columns.length - 1 && foot}
          </table>
        ))}
      </div>
    </div>
  ));
}
