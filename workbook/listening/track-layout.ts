import { scaleLinear } from 'd3-scale';
import { line } from 'd3-shape';
import { formatNumber, type HeardFlight } from '../../engine/index';

const HEIGHT = 210;
const ROOM = { left: 56, right: 10, top: 22, bottom: 34 } as const;
/** So many dots say as much as all. */
const MOST_DOTS = 600;
/** Of the pitches that stray, so many at either end don't stretch the picture. */
const ENDS = 0.02;
const ABOUT_TICK = 80;

export interface TrackLayout {
  readonly width: number;
  readonly height: number;
  readonly dots: readonly { readonly x: number; readonly y: number }[];
  /** The swing of each lap. */
  readonly curve: string;
  readonly across: readonly { readonly at: number; readonly text: string }[];
  readonly up: readonly { readonly at: number; readonly text: string }[];
  readonly frame: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };
}

/** The rpm as heard against time: what was followed as dots, and what the swing of each lap makes of it as a line. */
export function layOutTrack({ times, heard, fitted }: HeardFlight['track'], width: number): TrackLayout | undefined {
  if (times.length === 0) return undefined;
  const rpm = [...heard].map((turns) => 60 * turns);
  const sorted = [...rpm].sort((a, b) => a - b);
  const [low, high] = [sorted[Math.floor(ENDS * sorted.length)]!, sorted[Math.ceil((1 - ENDS) * sorted.length) - 1]!];
  const margin = 0.1 * (high - low) + 0.002 * high;
  const frame = { left: ROOM.left, right: width - ROOM.right, top: ROOM.top, bottom: HEIGHT - ROOM.bottom };
  const x = scaleLinear([0, times.at(-1)!], [frame.left, frame.right]);
  const y = scaleLinear([low - margin, high + margin], [frame.bottom, frame.top]);
  const every = Math.ceil(times.length / MOST_DOTS);
  const inside = (value: number): boolean => value >= low - margin && value <= high + margin;
  const dots = rpm.flatMap((value, k) => (k % every === 0 && inside(value) ? [{ x: x(times[k]!), y: y(value) }] : []));
  const curve = line<number>(
    (k) => x(times[k]!),
    (k) => y(60 * fitted[k]!),
  ).defined((k) => !Number.isNaN(fitted[k]!))([...times.keys()]);
  const ticks = (scale: typeof x, count: number) =>
    scale.ticks(count).map((value) => ({ at: scale(value), text: formatNumber(value) }));
  return {
    ...{ width, height: HEIGHT, dots, frame, curve: curve ?? '' },
    across: ticks(x, Math.max(2, Math.round(width / ABOUT_TICK))),
    up: ticks(y, 4),
  };
}
