import {
  csvLine,
  fromSI,
  type NameInfo,
  type Part,
  type PartField,
  type PartsCell,
  partFields,
  readEntry,
  withUnit,
} from '../../../engine/index';
import { shapeList } from './shapes';

/** What a sheet says of a path: its unit, and its SI value. */
export interface Numbers {
  name(path: string): Pick<NameInfo, 'unit'> | undefined;
  value(path: string): number;
}

interface Column {
  readonly words: string;
  /** Of the table as a whole: its last line. */
  readonly all?: string | undefined;
  of(row: Part): string;
}

/** Results beside what is typed: nothing of them is taken in again. */
const RESULTS = [
  ['mass', 'mass that counts'],
  ['estimate', 'estimate'],
  ['moment_share', 'share of the moment'],
] as const;

/** What every part has, in their places; the sizes of the shapes stand before them. */
const EVERY = ['weighed', 'x', 'y', 'z'];

/**
 * The weight and balance table for other programs, and to be taken in again: one row a part with its shape, quantity and sizes, then the
 * totals as set; units stand in the heading. A formula is written as the number that it comes to, to the last bit.
 */
export function partsCsv(cell: PartsCell, numbers: Numbers): string {
  const used = usedFields(cell.rows);
  const sizes = used.filter(({ name }) => !EVERY.includes(name) && name !== 'count');
  const columns: readonly Column[] = [
    { words: 'part', all: 'all parts, fuel as set', of: ({ title }) => title },
    { words: 'name', all: cell.name, of: ({ name }) => name },
    { words: 'shape', of: ({ shape }) => shapeList.find((each) => each.shape === shape)!.word },
    { words: 'how many', of: (row) => typed(cell, row, 'count', '', numbers) || '1' },
    ...(cell.rows.some(({ fuel }) => fuel) ? [{ words: 'fuel', of: ({ fuel }: Part) => (fuel ? 'yes' : '') }] : []),
    ...sizes.map((field) => fieldColumn(cell, field, numbers)),
    ...EVERY.map((name) => fieldColumn(cell, used.find((field) => field.name === name) ?? NUMBER(name), numbers)),
    ...(cell.rows.some((row) => row.weighed_as !== undefined)
      ? [{ words: 'weighed as made of', of: (row: Part) => row.weighed_as ?? '' }]
      : []),
    ...RESULTS.map(([name, words]) => resultColumn(cell, name, words, numbers)),
  ];
  const rows = [
    columns.map(({ words }) => words),
    ...cell.rows.map((row) => columns.map(({ of }) => of(row))),
    columns.map(({ all = '' }) => all),
  ];
  return rows.map(csvLine).join('');
}

const NUMBER = (name: string): PartField => partFields('point').find((field) => field.name === name)!;

/** Fields in which any row has a text, those of the shapes first. */
function usedFields(rows: readonly Part[]): readonly PartField[] {
  const all = new Map(rows.flatMap(({ shape }) => partFields(shape).map((field) => [field.name, field] as const)));
  return [...all.values()].filter(({ name }) => rows.some((row) => has(row, name)));
}

const has = (row: Part, name: string): boolean =>
  (row.fields[name] ?? '').trim() !== '' && partFields(row.shape).some((field) => field.name === name);

const HEADS: Readonly<Record<string, string>> = {
  mass: 'mass of one',
  weighed: 'weighed',
  x: 'x',
  y: 'y',
  z: 'z',
  wire: 'wire',
};

function fieldColumn(cell: PartsCell, { name, title, unit, dimension }: PartField, numbers: Numbers): Column {
  const own = HEADS[name] ?? title.toLowerCase();
  if (!dimension) return { words: own, of: (row) => (has(row, name) ? row.fields[name]!.trim() : '') };
  const first = cell.rows.find((row) => has(row, name));
  const shown =
    numbers.name(`${cell.name}.${first?.name}.${name}`)?.unit ?? numbers.name(`${cell.name}.${name}`)?.unit ?? unit;
  return {
    words: shown === '' ? own : `${own}, ${shown}`,
    all: ['x', 'y', 'z'].includes(name) ? rounded(numbers.value(`${cell.name}.${name}`), shown) : undefined,
    of: (row) => typed(cell, row, name, shown, numbers),
  };
}

/** The number that a text of a part comes to; '' where it has none. */
function typed(cell: PartsCell, row: Part, name: string, unit: string, numbers: Numbers): string {
  if (!has(row, name)) return '';
  const path = `${cell.name}.${row.name}`;
  const value = numbers.value(`${path}.${name}`);
  const text = row.fields[name]!.trim();
  const alone = readAs(text, unit);
  // What is read under the mass of a part is what counts, by the scale and with its finish.
  if (name === 'mass') return written(Number.isNaN(alone) ? bareMass(path, numbers) : alone, unit, text);
  return written(Number.isNaN(value) ? alone : value, unit, text);
}

function bareMass(path: string, { value }: Numbers): number {
  const or = (number: number, otherwise: number): number => (Number.isNaN(number) ? otherwise : number);
  const finish = or(value(`${path}.coats_area`) * value(`${path}.coat`), 0);
  return value(`${path}.estimate`) / or(value(`${path}.count`), 1) - finish;
}

function resultColumn(cell: PartsCell, name: string, words: string, numbers: Numbers): Column {
  const first = cell.rows[0];
  const unit =
    numbers.name(`${cell.name}.${name}`)?.unit ??
    (first && numbers.name(`${cell.name}.${first.name}.${name}`)?.unit) ??
    '';
  return {
    words: unit === '' ? words : `${words}, ${unit}`,
    all: rounded(numbers.value(`${cell.name}.${name}`), unit),
    of: (row) => rounded(numbers.value(`${cell.name}.${row.name}.${name}`), unit),
  };
}

/** Digits of a number that is written for other programs: more than any scale gives, fewer than a conversion's rounding. */
const DIGITS = 9;
const [EASY_DIGITS, MOST_DIGITS] = [14, 17];

const rounded = (si: number, unit: string): string =>
  Number.isFinite(si) ? String(Number(fromSI(si, unit).toPrecision(DIGITS))) : '';

/** A number with as few digits as are read back as the very same one, else what was typed; '' where there is none. */
function written(si: number, unit: string, text: string): string {
  if (!Number.isFinite(si)) return '';
  for (let digits = DIGITS; digits <= MOST_DIGITS; digits++) {
    // What was typed is easier to read than all digits of a conversion.
    if (digits > EASY_DIGITS && readAs(text, unit) === si) return text;
    const number = String(Number(fromSI(si, unit).toPrecision(digits)));
    if (readAs(withUnit(number, unit), unit) === si) return number;
  }
  return rounded(si, unit);
}

/** What a text alone comes to, SI; NaN for one that says names. */
function readAs(text: string, unit: string): number {
  const read = readEntry(text, unit);
  return read.ok ? read.si : Number.NaN;
}
