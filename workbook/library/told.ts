import {
  type ColumnDescription,
  formatQuantity,
  inSentence,
  type RowDescription,
  shownUnit,
  type TableDescription,
  type UnitSet,
} from '../../engine/index';

/** What a row is called in a design of these units: wire by its fraction of an inch in one in inches. */
export const titleTold = (row: Pick<RowDescription, 'title' | 'inchTitle'>, units: UnitSet): string =>
  units === 'inch_pound' ? row.inchTitle : row.title;

/** One number of a row of the library in the unit set of the sheet; undefined where it is not known. */
export function numberTold(column: ColumnDescription, row: RowDescription, units: UnitSet): string | undefined {
  const value = row.values[column.name] ?? Number.NaN;
  if (Number.isNaN(value)) return undefined;
  if (column.options) return column.options[value]?.replaceAll('_', ' ');
  return formatQuantity(value, shownUnit(column.unit, units, column.tradeUnit));
}

/** "density 135 kg/m³, Young’s modulus not known" */
export const numbersTold = (table: TableDescription, row: RowDescription, units: UnitSet): string =>
  table.columns
    .map((column) => ({ column, told: numberTold(column, row, units) }))
    .filter(({ column, told }) => told !== undefined || !column.seldom)
    .map(({ column, told }) => `${titleInside(column.title)} ${told ?? 'not known'}`)
    .join(', ');

/** A title within a sentence: names of people keep their capital. */
export const titleInside = (title: string): string => (title.startsWith('Young') ? title : inSentence(title));
