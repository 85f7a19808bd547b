import type { Dimension } from '../units/index';
import { describeDimension, sameDimension, toSI, unitNamed } from '../units/index';
import { readCsv } from './csv';

/** What every row of every data file has: an identity, where its values come from, and whether they are recalled, not read. */
export interface Sourced {
  readonly name: string;
  readonly title: string;
  /** What it is called in a design in inches, where that is another size's name: its fraction of an inch. */
  readonly inchTitle?: string;
  readonly source: string;
  /** The values were recalled, not read in the source: provisional until someone opens it. */
  readonly memory: boolean;
}

/** Reads the columns of one row, each with its check. */
export interface RowReader extends Sourced {
  text(column: string): string;
  /** One of the texts that are allowed. */
  oneOf<T extends string>(column: string, allowed: readonly T[]): T;
  /** "160 kg/m³" in SI. A blank is refused unless `blank` says what it stands for. */
  quantity(column: string, dimension: Dimension, blank?: number): number;
}

const NAME = /^[a-z][a-z0-9_]*$/;

/**
 * Reads a data file. Refuses, naming file and line: a missing column, a name that can't be written in a formula, the same name twice, a
 * row without source, a memory mark other than yes or no, a number without its unit.
 */
export function readTable<T>(file: string, text: string, read: (row: RowReader) => T): T[] {
  const seen = new Map<string, number>();
  return refuseWith(file, () =>
    readCsv(text).map(({ line, values }) =>
      refuseWith(`line ${line}`, () => {
        const reader = readerOf(values);
        const before = seen.get(reader.name);
        if (before !== undefined) {
          throw new RangeError(`name "${reader.name}" is taken by line ${before}; each row needs one of its own`);
        }
        seen.set(reader.name, line);
        return read(reader);
      }),
    ),
  );
}

function refuseWith<T>(place: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    throw new RangeError(`${place}: ${(error as Error).message}`);
  }
}

function readerOf(values: Readonly<Record<string, string>>): RowReader {
  const text = (column: string): string => {
    const value = values[column];
    if (value === undefined) throw new RangeError(`there is no column "${column}"`);
    return value.trim();
  };
  const filled = (column: string): string => {
    const value = text(column);
    if (value === '') throw new RangeError(`${column} is blank`);
    return value;
  };
  const name = filled('name');
  if (!NAME.test(name)) {
    throw new RangeError(`name "${name}" is not lower-case letters, digits and underscores, beginning with a letter`);
  }
  const memory = filled('memory');
  if (memory !== 'yes' && memory !== 'no') throw new RangeError(`memory is "${memory}"; it must be yes or no`);
  return {
    name,
    title: filled('title'),
    ...(values.inch_title?.trim() ? { inchTitle: values.inch_title.trim() } : {}),
    source: sourceOf(text('source')),
    memory: memory === 'yes',
    text,
    oneOf(column, allowed) {
      const value = filled(column);
      const found = allowed.find((each) => each === value);
      if (found === undefined) {
        throw new RangeError(`${column} is "${value}"; it must be one of ${allowed.join(', ')}`);
      }
      return found;
    },
    quantity(column, dimension, blank) {
      const value = text(column);
      if (value === '' && blank !== undefined) return blank;
      return readQuantity(column, filled(column), dimension);
    },
  };
}

function sourceOf(source: string): string {
  if (source !== '') return source;
  throw new RangeError(
    'source is blank; name where the values come from, or write "Common practice, no source" and mark the row as recalled',
  );
}

function readQuantity(column: string, text: string, dimension: Dimension): number {
  const space = text.indexOf(' ');
  const number = Number(space < 0 ? text : text.slice(0, space));
  const unit = space < 0 ? '' : text.slice(space + 1).trim();
  const allowed = `write ${describeDimension(dimension)} with its unit`;
  if (!Number.isFinite(number)) throw new RangeError(`${column} is "${text}", which is no number; ${allowed}`);
  const known = unitNamed(unit);
  if (!known || !sameDimension(known.dimension, dimension)) {
    const wrong = unit === '' ? 'has no unit' : `has the unit "${unit}"`;
    throw new RangeError(`${column} is "${text}", which ${wrong}; ${allowed}`);
  }
  return toSI(number, unit);
}
