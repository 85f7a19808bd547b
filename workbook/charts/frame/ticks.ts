import { scaleLinear } from 'd3-scale';
import type { Range } from './y-range';

export interface Ticks {
  readonly values: readonly number[];
  text(value: number): string;
}

/** About `count` round numbers within a range, none under `least`, written with the decimals that their step needs. */
export function roundTicks(range: Range, count: number, least = Number.NEGATIVE_INFINITY): Ticks {
  const values = scaleLinear()
    .domain(range)
    .ticks(count)
    .filter((value) => value >= least);
  const step = values.length > 1 ? Math.abs(values[1]! - values[0]!) : Math.abs(values[0] ?? 1) || 1;
  const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
  return { values, text: (value) => value.toFixed(decimals).replace('-', '−') };
}

/** One tick for each option. */
export function optionTicks(options: readonly string[], indices: ArrayLike<number>): Ticks {
  return { values: Array.from(indices), text: (index) => options[index] ?? '' };
}
