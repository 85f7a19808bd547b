import { scaleLinear } from 'd3-scale';
import type { WeighingAnswer } from '../../../engine/index';

/** The little chart of the CG in pixels. */
export interface HistoryLayout {
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly points: readonly { readonly x: number; readonly y: number }[];
  /** Outline of the band, round. */
  readonly band: string;
  readonly wanted?: { readonly y: number; readonly top: number; readonly bottom: number };
  /** SI station and its place. */
  readonly ticks: readonly { readonly value: number; readonly y: number }[];
}

const HEIGHT = 150;
const EDGE = 12;
/** Room for the numbers at the side. */
const NUMBERS = 64;

/** One place across for each weighing, the CG upwards, the band about it. `toShown`: SI in the unit of the numbers, `toSI` back. */
export function layHistory(
  { history, wanted, within }: WeighingAnswer,
  width: number,
  { toShown, toSI }: { toShown(si: number): number; toSI(shown: number): number },
): HistoryLayout {
  const ends = [
    ...history.flatMap(({ x, band }) => [x - band, x + band]),
    ...(Number.isNaN(wanted) ? [] : [wanted - within, wanted + within]),
  ].map(toShown);
  const [low, high] = [Math.min(...ends), Math.max(...ends)];
  const up = scaleLinear([low, high === low ? low + 1 : high], [HEIGHT - EDGE, EDGE]).nice(4);
  const y = (si: number): number => up(toShown(si));
  const [left, right] = [NUMBERS, Math.max(NUMBERS + 1, width - EDGE)];
  const across = scaleLinear([0, Math.max(1, history.length - 1)], [left, right]);
  const points = history.map(({ x }, k) => ({ x: across(k), y: y(x) }));
  const edge = (sign: number) => history.map(({ x, band }, k) => `${across(k)},${y(x + sign * band)}`);
  return {
    ...{ height: HEIGHT, left, right, points },
    band: [...edge(1), ...edge(-1).reverse()].join(' '),
    ticks: up.ticks(4).map((shown) => ({ value: toSI(shown), y: up(shown) })),
    ...(Number.isNaN(wanted) ? {} : { wanted: { y: y(wanted), top: y(wanted + within), bottom: y(wanted - within) } }),
  };
}
