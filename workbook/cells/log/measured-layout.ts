import { scaleLinear } from 'd3-scale';
import type { FlownAnswer } from '../../../engine/index';

/** Measured and predicted of one result over the flights, in pixels. */
export interface MeasuredLayout {
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly ticks: readonly { readonly value: number; readonly y: number }[];
  readonly flights: readonly {
    readonly row: number;
    readonly x: number;
    readonly measured: number;
    /** Ends of one measuring error. */
    readonly top: number;
    readonly bottom: number;
    readonly predicted: number;
  }[];
}

const HEIGHT = 140;
const EDGE = 14;
/** Room for the numbers at the side. */
const NUMBERS = 60;

/** One place across for each flight that measured the result. `toShown`: SI in the unit of the numbers, `toSI` back. */
export function layMeasured(
  numbers: FlownAnswer['numbers'],
  width: number,
  { toShown, toSI }: { toShown(si: number): number; toSI(shown: number): number },
): MeasuredLayout {
  const ends = numbers.flatMap(({ value, error, predicted }) => [value - error, value + error, predicted]).map(toShown);
  const [low, high] = [Math.min(...ends), Math.max(...ends)];
  const up = scaleLinear([low, high === low ? low + 1 : high], [HEIGHT - EDGE, EDGE]).nice(4);
  const y = (si: number): number => up(toShown(si));
  const [left, right] = [NUMBERS, Math.max(NUMBERS + 1, width - EDGE)];
  const across = scaleLinear([0, Math.max(1, numbers.length - 1)], [left + EDGE, Math.max(left + EDGE, right - EDGE)]);
  return {
    ...{ height: HEIGHT, left, right },
    ticks: up.ticks(4).map((shown) => ({ value: toSI(shown), y: up(shown) })),
    flights: numbers.map(({ row, value, error, predicted }, k) => ({
      ...{ row, x: numbers.length === 1 ? (left + right) / 2 : across(k) },
      ...{ measured: y(value), top: y(value + error), bottom: y(value - error), predicted: y(predicted) },
    })),
  };
}
