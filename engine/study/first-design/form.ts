import { readPropellerSize, readText } from '../../formula/index';
import {
  type Dimension,
  describeDimension,
  inUnitsOf,
  LENGTH,
  MASS,
  ONE,
  POWER,
  sameDimension,
  TIME,
  toSI,
  type UnitSet,
  unitNamed,
  unparted,
  VOLUME,
  withUnit,
} from '../../units/index';
import type { FormField, FormProblem } from './told';

interface Asked {
  readonly title: string;
  readonly dimension: Dimension;
  /** Unit of a bare number and of the limits. */
  readonly unit: string;
  readonly low: number;
  readonly high: number;
  readonly optional: boolean;
  readonly mend: string;
}

export const asked: Readonly<Record<Exclude<FormField, 'propeller'>, Asked>> = {
  span: {
    title: 'Span',
    dimension: LENGTH,
    unit: 'm',
    low: 0.2,
    high: 3,
    optional: false,
    mend: 'Type the distance from wing tip to wing tip.',
  },
  chord: {
    title: 'Mean chord',
    dimension: LENGTH,
    unit: 'mm',
    low: 30,
    high: 800,
    optional: true,
    mend: 'Type the mean width of the wing, or leave it blank for a fifth of the span.',
  },
  displacement: {
    title: 'Engine',
    dimension: VOLUME,
    unit: 'cm³',
    low: 0.1,
    high: 30,
    optional: false,
    mend: 'Type the displacement; a 25 has 4.1 cm³.',
  },
  motor_power: {
    title: 'Motor',
    dimension: POWER,
    unit: 'W',
    low: 5,
    high: 4000,
    optional: false,
    mend: 'Type the electric power that the motor takes in flight.',
  },
  line_length: {
    title: 'Line length',
    dimension: LENGTH,
    unit: 'm',
    low: 4,
    high: 30,
    optional: true,
    mend: 'Type the length from grip to model, or leave it blank for one by the size of the engine.',
  },
  line_diameter: {
    title: 'Line diameter',
    dimension: LENGTH,
    unit: 'mm',
    low: 0.1,
    high: 2,
    optional: true,
    mend: 'Type the diameter of one line, or leave it blank for one by the size of the engine.',
  },
  line_count: {
    title: 'Lines',
    dimension: ONE,
    unit: '',
    low: 1,
    high: 4,
    optional: true,
    mend: 'Type how many lines, or leave it blank for two.',
  },
  weight: {
    title: 'Weight',
    dimension: MASS,
    unit: 'g',
    low: 20,
    high: 10000,
    optional: true,
    mend: 'Type the weight ready to fly with the tank empty, or leave it blank for an estimate.',
  },
  lap_time: {
    title: 'Lap time',
    dimension: TIME,
    unit: 's',
    low: 1,
    high: 20,
    optional: true,
    mend: 'Type the time of one level lap, or leave it blank if the model has not flown.',
  },
};

export type Read =
  | { readonly ok: true; readonly si: number | undefined }
  | { readonly ok: false; readonly message: string };

/** The number that a text says in SI, whatever its size; NaN for none. */
export function readAny(field: keyof typeof asked, text: string): number {
  const { unit } = asked[field];
  const read = readText(text, unit);
  return read.ok && read.expression.kind === 'literal'
    ? toSI(read.expression.number, read.expression.unit || unit)
    : Number.NaN;
}

/** Why an entry is no size of a propeller; undefined where it is one or blank. */
export function propellerProblem(text: string): FormProblem | undefined {
  if (text.trim() === '' || readPropellerSize(text)) return undefined;
  const message = unparted(
    `Propeller: “${text.trim()}” is not a diameter and a pitch. Type both as they are marked, such as 9x6 (inches) or 230x150 mm, or leave it blank for one by the size of the engine.`,
  );
  return { field: 'propeller', message };
}

/** Whether an entry was typed in inch-pound units. */
export function inTradeUnits(field: keyof typeof asked, text: string): boolean {
  const read = readText(text, asked[field].unit);
  return read.ok && read.expression.kind === 'literal' && unitNamed(read.expression.unit)?.system === 'inch_pound';
}

/** Reads one entry: a number with a unit, or a bare number in the unit of the entry. */
export function readEntry(field: keyof typeof asked, text: string, set: UnitSet = 'metric'): Read {
  const { title, dimension, unit, low, high, optional, mend } = asked[field];
  const limit = (value: number): string => inUnitsOf(withUnit(String(value), unit), set);
  const refuse = (what: string): Read => ({
    ok: false,
    message: unparted(`${title}: ${what} ${inUnitsOf(mend, set)}`),
  });
  if (text.trim() === '') return optional ? { ok: true, si: undefined } : refuse('nothing is typed.');
  const read = readText(text, unit);
  const found = read.ok ? read.expression : undefined;
  if (found?.kind !== 'literal') return refuse(`“${text.trim()}” is not a number with a unit.`);
  const typed = unitNamed(found.unit || unit)!;
  if (!sameDimension(typed.dimension, dimension)) {
    return refuse(`“${text.trim()}” is ${describeDimension(typed.dimension)}, not ${describeDimension(dimension)}.`);
  }
  const si = toSI(found.number, found.unit || unit);
  if (si < toSI(low, unit) || si > toSI(high, unit)) {
    return refuse(`${text.trim()} is not between ${limit(low)} and ${limit(high)}.`);
  }
  if (field === 'line_count' && !Number.isInteger(si)) return refuse(`${text.trim()} is not a whole number.`);
  return { ok: true, si };
}
