import { IDLE, type TimerState } from './state';

const KEY = 'tetherwright.lap-timer';

/** The state of the timer as this browser remembers it: a page that is loaded again goes on with it. */
export function rememberedTimer(): TimerState {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(KEY) ?? 'null');
    return isTimerState(kept) ? kept : IDLE;
  } catch {
    return IDLE;
  }
}

export function rememberTimer(state: TimerState): void {
  try {
    if (state.taps.length === 0) localStorage.removeItem(KEY);
    else localStorage.setItem(KEY, JSON.stringify(state));
  } catch {
    // It goes on without being remembered.
  }
}

const isNumber = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value);

function isTimerState(value: unknown): value is TimerState {
  if (typeof value !== 'object' || value === null) return false;
  const { way, laps, taps, done } = value as Record<string, unknown>;
  const isMoment = (tap: unknown): boolean =>
    typeof tap === 'object' &&
    tap !== null &&
    isNumber((tap as { wall?: unknown }).wall) &&
    isNumber((tap as { page?: unknown }).page);
  return (
    (way === 'each' || way === 'whole') &&
    isNumber(laps) &&
    typeof done === 'boolean' &&
    Array.isArray(taps) &&
    taps.every(isMoment)
  );
}
