import { type Moment, secondsBetween } from './clock';

/** How laps are timed: a tap at the end of each, or start and stop for so many. */
type TimerWay = 'each' | 'whole';

/** What was tapped. Nothing counts up: every time is the difference of two moments, so that it holds while the screen is locked. */
export interface TimerState {
  readonly way: TimerWay;
  /** Laps between start and stop. */
  readonly laps: number;
  /** The start, and the end of each lap; or start and stop. */
  readonly taps: readonly Moment[];
  /** No more taps are taken. */
  readonly done: boolean;
}

export const IDLE: TimerState = { way: 'each', laps: 10, taps: [], done: false };

/** A tap on the large button. The second ends a whole timing. */
export function tapped(state: TimerState, at: Moment): TimerState {
  if (state.done) return state;
  const taps = [...state.taps, at];
  return { ...state, taps, done: state.way === 'whole' && taps.length === 2 };
}

/** The last tap came by mistake. */
export const withoutLastTap = (state: TimerState): TimerState => ({
  ...state,
  taps: state.taps.slice(0, -1),
  done: false,
});

/** Of each lap that was ended, s; none for a whole timing. */
export const splitsOf = ({ way, taps }: TimerState): readonly number[] =>
  way === 'whole' ? [] : taps.slice(1).map((tap, k) => secondsBetween(taps[k]!, tap));

/** What was timed in all; undefined before the first lap has ended. */
export function timedBy(state: TimerState): { readonly laps: number; readonly time: number } | undefined {
  const { way, taps, laps } = state;
  const [first] = taps;
  const last = taps.at(-1);
  if (!first || !last || taps.length < 2) return undefined;
  return { laps: way === 'whole' ? laps : taps.length - 1, time: secondsBetween(first, last) };
}
