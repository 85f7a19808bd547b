import { superscript } from './describe';
import { lastPlace } from './last-place';
import { differenceFromSI, fromSI } from './units';

export interface FormatOptions {
  /** Significant digits of a number that is not exact; digits before the decimal point are never dropped. */
  readonly significant?: number;
  /** Fixed number of decimals instead, for a column of figures. */
  readonly decimals?: number;
  /** A plus sign before a positive number, for a change. */
  readonly sign?: boolean;
  /** The value is a difference of two: the zero of a temperature scale drops out. */
  readonly difference?: boolean;
  /** Written behind the number in place of the unit: "3.06 g" for pull per weight. */
  readonly suffix?: string;
  /** Words for a number above and below zero, in place of its sign: "0.3° in". */
  readonly ways?: Ways;
}

/** Which way a number above zero goes, and one below; and what is said in place of zero, else the zero itself. */
export type Ways = readonly [above: string, below: string, none?: string];

const SIGNIFICANT = 3;
/** Digits in which a conversion's rounding cannot be seen: 0.0381 m is 38.1 mm, not 38.099999999999994. */
const EXACT_DIGITS = 12;
/** From here up, and below the next, a power of ten is shorter to read than the digits. */
const LARGE = 1e7;
const SMALL = 1e-4;
/** Sums that should cancel leave this much in the units that people read; it is shown as 0. */
const NOTHING = 1e-15;
/** Where a shorter number is meant exactly in other units, 0.38 mm of wire, the last place does not cut it. */
const ALWAYS_CUT: ReadonlySet<string> = new Set(['°', '%', 'rpm']);
/** Units that stand against the number. */
const CLOSE_UP: ReadonlySet<string> = new Set(['°']);

/**
 * A number for people: three significant digits, whole parts in full, U+2212 for minus, an en dash where there is no
 * number. Zeros at the end stand for digits that were rounded away: 46.04 is "46.0", 46 is "46".
 */
export function formatNumber(value: number, significant: number = SIGNIFICANT): string {
  return write(value, { significant });
}

/** An SI value in a unit, for people: "18.3 m", "−0.4°", "3.06 g" with a suffix; a plain number for ''. */
export function formatQuantity(si: number, unit: string, options: FormatOptions = {}): string {
  const { ways } = options;
  if (ways) {
    return withWay(formatQuantity(Math.abs(si), unit, { ...options, ways: undefined }), si, ways);
  }
  const value = options.difference ? differenceFromSI(si, unit) : fromSI(si, unit);
  const number = write(value, { ...options, unit });
  const behind = options.suffix || unit;
  if (behind === '' || number === NO_NUMBER) return number;
  return bound(number, behind);
}

/** An SI value as a text that can be typed and reads back as the same value to twelve digits: "38.1 mm", "1.81e-5 Pa·s". */
export function writeQuantity(si: number, unit: string): string {
  if (!Number.isFinite(si)) return '';
  const number = String(Number(fromSI(si, unit).toPrecision(EXACT_DIGITS)));
  return withUnit(number, unit);
}

/** A size as it is written, with the word for the way in which its value goes; a size that reads zero goes none. */
export function withWay(size: string, value: number, [above, below, none]: Ways): string {
  if (/[1-9∞]/.test(size)) return `${size} ${value < 0 ? below : above}`;
  return Number.isNaN(value) ? size : (none ?? size);
}

/** Number and unit that are never parted at the end of a line. */
export const bound = (number: string, unit: string): string =>
  CLOSE_UP.has(unit) ? number + unit : `${number}\u00a0${unit.replaceAll(' ', '\u00a0')}`;

/** A unit behind its number as both are typed: "38.1 mm", "12°". */
export function withUnit(number: string, unit: string): string {
  if (unit === '') return number;
  return CLOSE_UP.has(unit) ? number + unit : `${number} ${unit}`;
}

const NO_NUMBER = '–';

interface WriteOptions {
  readonly significant?: number;
  readonly decimals?: number;
  readonly sign?: boolean;
  readonly unit?: string;
}

function write(value: number, options: WriteOptions): string {
  if (Number.isNaN(value)) return NO_NUMBER;
  const size = Math.abs(value);
  const digits = size === Number.POSITIVE_INFINITY ? '∞' : writeSize(size, options);
  const zero = !/[1-9∞]/.test(digits);
  if (zero) return digits;
  return (value < 0 ? '−' : options.sign ? '+' : '') + digits;
}

function writeSize(size: number, { significant, decimals, unit = '' }: WriteOptions): string {
  if (decimals !== undefined && size < LARGE) return apart(size.toFixed(decimals));
  if (size < NOTHING) return '0';
  const most = mostDecimals(size, unit, significant);
  if (size >= LARGE || (size < SMALL && most > 4)) return writePowerOfTen(size, significant ?? SIGNIFICANT);
  return apart(writeDigits(size, significant ?? SIGNIFICANT, most));
}

/** A number asked for with its digits, and one that is short by itself, is not cut where its unit says. */
function mostDecimals(size: number, unit: string, significant: number | undefined): number {
  const last = lastPlace(unit, size);
  if (ALWAYS_CUT.has(unit)) return last;
  const short = Number(size.toPrecision(SIGNIFICANT)) === Number(size.toPrecision(EXACT_DIGITS));
  return significant !== undefined || (short && size >= SMALL) ? Number.POSITIVE_INFINITY : last;
}

/** Thousands stand apart by a narrow space that does not break, from five digits on. */
const apart = (digits: string): string =>
  /^[0-9]{5}/.test(digits) ? digits.replace(/\B(?=(?:[0-9]{3})+(?![0-9]))(?<!\.[0-9]*)/g, '\u202f') : digits;

function writeDigits(size: number, significant: number, most: number): string {
  // The exponent after rounding: 9.996 to three digits is 10.0, not 10.00.
  const exponent = Number(size.toExponential(significant - 1).split('e')[1]);
  const places = Math.min(Math.max(significant - 1 - exponent, 0), most);
  const exact = String(Number(size.toPrecision(EXACT_DIGITS)));
  const exactPlaces = exact.includes('e') ? places : (exact.split('.')[1]?.length ?? 0);
  const rounded = size.toFixed(Math.min(places, exactPlaces));
  return Number(rounded) === 0 ? '0' : rounded;
}

function writePowerOfTen(size: number, significant: number): string {
  const [digits, exponent] = size.toExponential(significant - 1).split('e') as [string, string];
  const exact = String(Number(Number(digits).toPrecision(significant)));
  return `${exact}×10${superscript(Number(exponent))}`;
}
