import { isGroup, type Plain } from './plain';

/**
 * Version 2 was one column of cells: they go on three sheets, what is set and decided, what the model is, and what it weighs.
 * Studies stay beside the charts that show them. Kinds are called as a builder calls them. The number of the sheet in the
 * title block is counted now.
 */
export function cellsToSheets({ cells, units, sheet: _, ...file }: Plain): Plain {
  const named = { ...file, units: units === 'trade' ? 'inch_pound' : units };
  if (!Array.isArray(cells)) return { ...named, sheets: cells };
  const placed = cells.map((cell: unknown) => [sheetOf(cell), renamed(cell)] as const);
  const on = (title: string): unknown[] => placed.filter(([sheet]) => sheet === title).map(([, cell]) => cell);
  const sheets = TITLES.map((title, k) => ({ id: `s${k + 1}`, title, pieces: on(title) }));
  return { ...named, sheets: sheets.filter(({ pieces }, k) => k === 0 || pieces.length > 0) };
}

const TITLES = ['Decide', 'Model', 'Weights'] as const;
const WEIGHTS: ReadonlySet<unknown> = new Set(['balance', 'ballast']);

/** What no sheet is known for stays in sight on the first, to be told if it is wrong. */
function sheetOf(cell: unknown): (typeof TITLES)[number] {
  if (!isGroup(cell)) return 'Decide';
  if (cell.kind === 'parts') return 'Weights';
  if (cell.kind === 'block') return WEIGHTS.has(cell.block) ? 'Weights' : 'Model';
  return cell.kind === 'drawing' ? 'Model' : 'Decide';
}

function renamed(cell: unknown): unknown {
  if (!isGroup(cell)) return cell;
  switch (cell.kind) {
    case 'block':
      return withKey({ ...cell, kind: 'model' }, 'block', 'of');
    case 'sweep':
      return { ...cell, kind: 'trial_series' };
    case 'spread':
      return { ...cell, kind: 'tolerances', rows: rowsOf(cell.rows, (row) => withKey(row, 'spread', 'distribution')) };
    case 'levers':
      return { ...cell, kind: 'what_helps' };
    case 'chart':
    case 'table':
      return withKey(cell, 'sweep', 'series');
    case 'variables':
      return { ...cell, rows: rowsOf(cell.rows, withPlainUnit) };
    case 'formula':
      return { ...cell, lines: rowsOf(cell.lines, withPlainUnit) };
    case 'choice':
      return { ...cell, columns: rowsOf(cell.columns, withPlainUnit) };
    default:
      return cell;
  }
}

const rowsOf = (rows: unknown, change: (row: Plain) => Plain): unknown =>
  Array.isArray(rows) ? rows.map((row: unknown) => (isGroup(row) ? change(row) : row)) : rows;

function withKey(group: Plain, from: string, to: string): Plain {
  if (!(from in group)) return group;
  const { [from]: value, ...others } = group;
  return { ...others, [to]: value };
}

/** Version 2 read a unit by any spelling of its signs; a file has one. */
function withPlainUnit(row: Plain): Plain {
  if (typeof row.unit !== 'string') return row;
  const unit = row.unit
    .replace(/\^([234])/g, (_, power: string) => '²³⁴'[Number(power) - 2]!)
    .replace(/\u03bc/g, 'µ')
    .replace(/\u2126/g, 'Ω')
    .replace(/[\u22c5\u2022]/g, '·')
    .replace(/\u00ba/g, '°');
  return { ...row, unit };
}
