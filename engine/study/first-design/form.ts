import { readText } from '../../formula/index';
import {
  type Dimension,
  describeDimension,
  LENGTH,
  MASS,
  POWER,
  sameDimension,
  TIME,
  toSI,
  unitNamed,
  VOLUME,
} from '../../units/index';
import type { FormField } from './told';

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

export const asked: Readonly<Record<FormField, Asked>> = {
  span: {
    title: 'Span',
    dimension: LENGTH,
    unit: 'm',
    low: 0.4,
    high: 2,
    optional: false,
    mend: 'Type the distance from wing tip to wing tip.',
  },
  chord: {
    title: 'Mean chord',
    dimension: LENGTH,
    unit: 'mm',
    low: 60,
    high: 500,
    optional: true,
    mend: 'Type the mean width of the wing, or leave it blank for a fifth of the span.',
  },
  displacement: {
    title: 'Engine',
    dimension: VOLUME,
    unit: 'cm³',
    low: 0.3,
    high: 15,
    optional: false,
    mend: 'Type the displacement; a 25 has 4.1 cm³.',
  },
  motor_power: {
    title: 'Motor',
    dimension: POWER,
    unit: 'W',
    low: 30,
    high: 1500,
    optional: false,
    mend: 'Type the electric power that the motor takes in flight.',
  },
  line_length: {
    title: 'Line length',
    dimension: LENGTH,
    unit: 'm',
    low: 5,
    high: 25,
    optional: true,
    mend: 'Type the length from grip to model, or leave it blank for one by the size of the engine.',
  },
  weight: {
    title: 'Weight',
    dimension: MASS,
    unit: 'g',
    low: 50,
    high: 5000,
    optional: true,
    mend: 'Type the weight ready to fly with the tank empty, or leave it blank for an estimate.',
  },
  lap_time: {
    title: 'Lap time',
    dimension: TIME,
    unit: 's',
    low: 1.5,
    high: 12,
    optional: true,
    mend: 'Type the time of one level lap, or leave it blank if the model has not flown.',
  },
};

export type Read =
  | { readonly ok: true; readonly si: number | undefined }
  | { readonly ok: false; readonly message: string };

/** Whether an entry was typed in inch-pound units. */
export function inTradeUnits(field: FormField, text: string): boolean {
  const read = readText(text, asked[field].unit);
  return read.ok && read.expression.kind === 'literal' && unitNamed(read.expression.unit)?.system === 'inch_pound';
}

/** Reads one entry: a number with a unit, or a bare number in the unit of the entry. */
export function readEntry(field: FormField, text: string): Read {
  const { title, dimension, unit, low, high, optional, mend } = asked[field];
  const refuse = (what: string): Read => ({ ok: false, message: `${title}: ${what} ${mend}` });
  if (text.trim() === '') return optional ? { ok: true, si: undefined } : refuse('nothing is typed.');
  const read = readText(text, unit);
  const found = read.ok ? read.expression : undefined;
  if (found?.kind !== 'literal') return refuse(`"${text.trim()}" is not a number with a unit.`);
  const typed = unitNamed(found.unit || unit)!;
  if (!sameDimension(typed.dimension, dimension)) {
    return refuse(`"${text.trim()}" is ${describeDimension(typed.dimension)}, not ${describeDimension(dimension)}.`);
  }
  const si = toSI(found.number, found.unit || unit);
  if (si < toSI(low, unit) || si > toSI(high, unit)) {
    return refuse(`${text.trim()} is not between ${low} ${unit} and ${high} ${unit}.`);
  }
  return { ok: true, si };
}
