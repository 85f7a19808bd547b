import { formatQuantity } from '../../units/index';
import { named } from '../named';
import type { Slot } from '../program';

/** An input with its allowed range, SI, both ends allowed. NaN (nothing typed, nothing known) is no breach. */
export interface Ranged {
  readonly path: string;
  readonly slot: Slot;
  readonly unit: string;
  readonly suffix?: string;
  /** What it is called where nothing has its path for a name; at the beginning of a sentence. */
  readonly words?: string;
  readonly range: readonly [number, number];
}

/** Index of the first input outside its range for sample i, −1 where all are within. */
export function firstBreach(
  m: Float64Array,
  columns: Int32Array,
  lows: Float64Array,
  highs: Float64Array,
  i: number,
): number {
  for (let k = 0; k < columns.length; k++) {
    const value = m[columns[k]! + i]!;
    if (value < lows[k]! || value > highs[k]!) return k;
  }
  return -1;
}

/** "The height of Flight is 120 m. Allowed: −5 m to 10 m. Type a value within that." */
export function tellBreach(input: Ranged, value: number): string {
  const write = (si: number): string => formatQuantity(si, input.unit, { significant: 4, suffix: input.suffix });
  const [low, high] = input.range;
  const allowed =
    low === Number.NEGATIVE_INFINITY
      ? `at most ${write(high)}`
      : high === Number.POSITIVE_INFINITY
        ? `at least ${write(low)}`
        : `${write(low)} to ${write(high)}`;
  return `${input.words ?? named(input.path)} is ${write(value)}. Allowed: ${allowed}. Type a value within that.`;
}

/** Columns and limits of the inputs, laid out for `firstBreach`. */
export function placeRanges(inputs: readonly Ranged[], column: (s: Slot) => number) {
  return {
    columns: Int32Array.from(inputs, (input) => column(input.slot)),
    lows: Float64Array.from(inputs, (input) => input.range[0]),
    highs: Float64Array.from(inputs, (input) => input.range[1]),
  };
}
