import * as v from 'valibot';
import { CHARGE, type Dimension, ONE, TIME, VOLUME } from '../../units/index';
import type { Document, LogCell, LogColumn, LogRow } from '../document';
import { named } from '../named';
import { cellsOf } from '../sheets';
import type { Builder } from '../specs';
import { textsEntry } from './entries';
import type { Rewrite, Text } from './kind';
import { mapFields, mapTexts, withText } from './rows';

/** Path of a row: its texts are `flown.row1.laps`, `flown.row1.time` and `flown.row1.COLUMN`. */
export const logRowPath = (cell: Pick<LogCell, 'name'>, k: number): string => `${cell.name}.row${k + 1}`;

/** What a file says of a flight, in its order. */
export const logRowSchema = v.strictObject({
  label: v.string(),
  date: v.string(),
  flown_as: v.string(),
  line_set: v.string(),
  laps: v.string(),
  time: v.string(),
  splits: v.string(),
  all_laps: v.string(),
  fuel_in: v.string(),
  fuel_left: v.string(),
  propeller: v.string(),
  needle: v.string(),
  plug: v.string(),
  values: textsEntry,
  note: v.string(),
});

/** Names that every row has. */
export const ROW_NAMES: ReadonlySet<string> = new Set(Object.keys(logRowSchema.entries));

/** Numbers that every row has; the columns have theirs. */
const NUMBERS = ['laps', 'time', 'all_laps', 'fuel_in', 'fuel_left'] as const;
type RowNumber = (typeof NUMBERS)[number];
const isNumber = (key: string): key is RowNumber => (NUMBERS as readonly string[]).includes(key);

export const rowTexts = (cell: LogCell, row: LogRow, k: number): Text[] => {
  const path = logRowPath(cell, k);
  return [
    ...NUMBERS.map((name) => ({ path: `${path}.${name}`, text: row[name] })),
    ...cell.columns.map(({ name }) => ({ path: `${path}.${name}`, text: row.values[name] ?? '' })),
  ];
};

export function putInRow(cell: LogCell, row: LogRow, key: string, text: string): LogRow | undefined {
  if (isNumber(key)) return { ...row, [key]: text };
  if (!cell.columns.some((column) => column.name === key)) return undefined;
  return { ...row, values: withText(row.values, key, text) };
}

export function rewriteRow({ columns }: LogCell, row: LogRow, { formula, option }: Rewrite): LogRow {
  const ofs = new Map(columns.map((column) => [column.name, column.of]));
  return mapFields(row, {
    ...Object.fromEntries(NUMBERS.map((name) => [name, formula(row[name])])),
    values: mapTexts(row.values, (text, name) => option(ofs.get(name) ?? '', formula(text))),
  });
}

const NOT_MEASURED = 'Blank: not measured.';

/** What an electric model is filled with is charge. */
const chargesIn = (document: Document): boolean =>
  cellsOf(document).some((cell) => cell.kind === 'model' && cell.of === 'electric');

export function layRow(cell: LogCell, columns: readonly LogColumn[], row: LogRow, k: number, builder: Builder): void {
  const path = logRowPath(cell, k);
  const where = `in ${row.label ? `flight ${row.label}` : `row ${k + 1}`}`;
  const charged = chargesIn(builder.document);
  const fluid = charged ? ([CHARGE, 'mAh'] as const) : ([VOLUME, 'mL'] as const);
  const lay = (
    name: RowNumber,
    title: string,
    doc: string,
    [dimension, unit]: readonly [Dimension, string],
    blank = Number.NaN,
  ) =>
    builder.text({
      ...{ cell: cell.id, path: `${path}.${name}`, text: row[name], kind: 'limit', detail: true },
      ...{ title: `${title} ${where}`, doc, unit, wants: { dimension }, blank },
      ...(name.startsWith('fuel') && !charged ? { tradeUnit: 'fl oz' } : {}),
    });
  lay('laps', 'Number of laps', 'How many laps the time is of. Blank: one.', [ONE, ''], 1);
  lay('time', 'Time', NOT_MEASURED, [TIME, 's']);
  lay('all_laps', 'All laps', 'Of the whole flight, timed or not. Blank: not counted.', [ONE, '']);
  lay('fuel_in', charged ? 'Charge put back' : 'Fuel in', NOT_MEASURED, fluid);
  lay('fuel_left', charged ? 'Charge left' : 'Fuel left', NOT_MEASURED, fluid);
  for (const { name, of } of columns) {
    builder.text({
      ...{ cell: cell.id, path: `${path}.${name}`, text: row.values[name] ?? '', kind: 'limit', detail: true },
      ...{
        title: `${named(of)} ${where}`,
        doc: NOT_MEASURED,
        like: of,
        unit: '',
        wants: 'anything',
        blank: Number.NaN,
      },
    });
  }
}
