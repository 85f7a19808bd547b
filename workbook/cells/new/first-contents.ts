import {
  type ChartCell,
  type CheckCell,
  type ChoiceCell,
  type ChoiceOption,
  cellsOf,
  type Document,
  type FormulaCell,
  freeName,
  type LeverRow,
  type LeversCell,
  type RowDescription,
  type SpreadCell,
  type SpreadRow,
  type SweepCell,
  type TableCell,
  type TableDescription,
  takenNames,
  unitNamed,
  type Variable,
  type VariablesCell,
} from '../../../engine/index';

/** A cell without what every cell has. */
type Contents<C> = Omit<C, 'id' | 'name' | 'title'>;

export const newVariable = (taken: ReadonlySet<string>): Variable => ({
  name: freeName('new_variable', taken),
  title: 'New variable',
  symbol: '',
  unit: '',
  text: '0',
  low: '0',
  high: '100',
  step: '',
});

export const newVariables = (document: Document): Contents<VariablesCell> => ({
  kind: 'variables',
  rows: [newVariable(takenNames(document))],
});

type Line = FormulaCell['lines'][number];
export const newLine = (taken: ReadonlySet<string>): Line => ({
  name: freeName('new_line', taken),
  text: '0',
  unit: '',
});

export const newFormula = (document: Document): Contents<FormulaCell> => ({
  kind: 'formula',
  lines: [newLine(takenNames(document))],
});

export const newChoice: Contents<ChoiceCell> = {
  kind: 'choice',
  of: 'numbers',
  columns: [],
  options: [
    { name: 'first', title: 'first', pattern: 'plain', values: {} },
    { name: 'second', title: 'second', pattern: 'plain', values: {} },
  ],
  text: 'first',
};

/** The first rows of a table, for a start. */
const FIRST_ROWS = 3;

export const newLibraryChoice = ({ name, rows }: TableDescription): Contents<ChoiceCell> => {
  const options = rows
    .slice(0, FIRST_ROWS)
    .map((row) => ({ name: row.name, title: row.title, pattern: 'plain' as const }));
  return { kind: 'choice', of: 'library', table: name, columns: [], options, text: options[0]?.name ?? '' };
};

/** Materials that a new choice begins with where the library has them, and their line patterns. */
const USUAL_STOCK = [
  { material: 'balsa_medium', pattern: 'grain' },
  { material: 'light_ply', pattern: 'ply' },
] as const;

/** Sheets of 3 mm, to be corrected. */
export function newStock(library: readonly RowDescription[]): Contents<ChoiceCell> {
  const options = USUAL_STOCK.flatMap(({ material, pattern }): ChoiceOption[] => {
    const row = library.find((each) => each.name === material);
    return row ? [stockOf(row.name, `${row.title}, 3 mm`, pattern)] : [];
  });
  const first = options[0] ?? stockOf('', 'first', 'plain');
  return {
    kind: 'choice',
    of: 'stack',
    columns: [],
    options: options.length > 0 ? options : [first],
    text: first.name,
  };
}

const stockOf = (material: string, title: string, pattern: ChoiceOption['pattern']): ChoiceOption => ({
  name: material === '' ? 'first' : material,
  title,
  pattern,
  layers: [{ name: 'sheet', material, text: material === '' ? '0 g/m²' : '3 mm' }],
});

/** Points of a new axis: enough for a smooth line, few enough to be there at once. */
const POINTS = 21;

/** Runs along the first variable that has a slide and asks for the first key figure, where the sheet has them. */
export function newSweep(document: Document): Contents<SweepCell> {
  const rows = cellsOf(document).flatMap((cell) => (cell.kind === 'variables' ? cell.rows : []));
  const variable = rows.find((row) => row.low !== '' && row.high !== '');
  return {
    kind: 'trial_series',
    axes: variable ? [{ of: variable.name, low: '', high: '', count: POINTS }] : [],
    wanted: document.figures.slice(0, 1),
  };
}

/** Things that a new spread begins with, and by how much: an amount to be corrected, which the page calls a beginning. */
const FIRST_DIFFERING = 3;
export const beginning = (name: string): string => `2 % × ${name}`;
const FIRST_DESIGNS = 500;
const FIRST_RESULTS = 3;

/** The first variables that are more than nothing, each by a little, all parts, and the first key figures. */
export function newSpread(document: Document): Contents<SpreadCell> {
  const rows = cellsOf(document).flatMap((cell) => (cell.kind === 'variables' ? cell.rows : []));
  // A share of nothing is nothing, and of a point on a scale it has no meaning.
  const fit = rows.filter(({ text, unit }) => /^\s*[\d.]*[1-9]/.test(text) && unitNamed(unit)?.offset === 0);
  return {
    kind: 'tolerances',
    rows: fit.slice(0, FIRST_DIFFERING).map(
      ({ name }): SpreadRow => ({
        ...{ of: name, distribution: 'normal', size: beginning(name), above: '' },
      }),
    ),
    parts: cellsOf(document).some((cell) => cell.kind === 'parts' && cell.rows.length > 0),
    wanted: document.figures.slice(0, FIRST_RESULTS),
    samples: FIRST_DESIGNS,
    seed: 1,
  };
}

/** Things that new levers begin with, and their step as a share of the way that the slide has. */
const FIRST_LEVERS = 5;
const FIRST_STEP = 10;

/** The first variables that have a slide, each by a tenth of it, and the first two key figures. */
export function newLevers(document: Document): Contents<LeversCell> {
  const rows = cellsOf(document).flatMap((cell) => (cell.kind === 'variables' ? cell.rows : []));
  const fit = rows.filter(({ unit, low, high }) => low !== '' && high !== '' && (unitNamed(unit)?.offset ?? 0) === 0);
  return {
    kind: 'what_helps',
    rows: fit
      .slice(0, FIRST_LEVERS)
      .map(({ name }): LeverRow => ({ of: name, way: 'both', text: `(${name}.high − ${name}.low) ÷ ${FIRST_STEP}` })),
    wanted: document.figures.slice(0, 2),
    rank: '',
    per: '',
  };
}

/** Shows the last sweep of the sheet, else its last spread, where it has one. */
export function newChart(document: Document): Contents<ChartCell> {
  const sweep = cellsOf(document).findLast((cell) => cell.kind === 'trial_series');
  const spread = cellsOf(document).findLast((cell) => cell.kind === 'tolerances');
  if (!sweep && spread) {
    const up = spread.wanted.slice(0, 1);
    return { kind: 'chart', chart: 'histogram', series: spread.name, across: '', up, lines: '' };
  }
  const across = sweep?.axes.at(-1)?.of ?? '';
  const lines = sweep?.axes.find((axis) => axis.of !== across)?.of ?? '';
  return {
    kind: 'chart',
    chart: 'line',
    series: sweep?.name ?? '',
    across,
    up: sweep?.wanted.slice(0, 1) ?? [],
    lines,
  };
}

/** Watches the first key figure without a limit yet. */
export const newCheck = (document: Document): Contents<CheckCell> => ({
  kind: 'check',
  of: document.figures[0] ?? '',
  low: '',
  high: '',
  below: '',
  above: '',
});

/** All rows of the last sweep, in its order. */
export const newTable = (document: Document): Contents<TableCell> => ({
  kind: 'table',
  series: cellsOf(document).findLast((cell) => cell.kind === 'trial_series')?.name ?? '',
  columns: [],
  keep: [],
  rows: 'all',
  reason: '',
  groups: [],
  measures: ['mean'],
  sort: '',
  descending: false,
});
