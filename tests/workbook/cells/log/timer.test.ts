import { describe, expect, it } from 'vitest';
import { type Moment, secondsBetween } from '../../../../workbook/cells/log/timer/clock';
import { rememberedTimer, rememberTimer } from '../../../../workbook/cells/log/timer/remembered';
import {
  IDLE,
  splitsOf,
  type TimerState,
  tapped,
  timedBy,
  withoutLastTap,
} from '../../../../workbook/cells/log/timer/state';
import { clockWords, lapsWords } from '../../../../workbook/cells/log/timer/words';

const at = (seconds: number, slept = 0, set = 0): Moment => ({
  wall: 1.7e12 + 1000 * (seconds + set),
  page: 1.7e12 + 0.3 + 1000 * (seconds - slept),
});
const taps = (from: TimerState, moments: readonly Moment[]): TimerState => moments.reduce(tapped, from);

describe('the lap timer', () => {
  it('goes by the finer clock while both agree, and by the clock of the day where the page slept', () => {
    expect(secondsBetween({ wall: 1000, page: 1000.25 }, { wall: 6021, page: 6020.5 })).toBeCloseTo(5.02025, 9);
    expect(secondsBetween(at(0), at(5.02, 3))).toBeCloseTo(5.02, 9);
  });

  it('tells each lap, and all of them', () => {
    const state = taps(IDLE, [at(0), at(5), at(10.1), at(15)]);
    expect(splitsOf(state).map((time) => time.toFixed(2))).toEqual(['5.00', '5.10', '4.90']);
    expect(timedBy(state)!.laps).toBe(3);
    expect(timedBy(state)!.time).toBeCloseTo(15, 6);
    expect(splitsOf(withoutLastTap(state))).toHaveLength(2);
    expect(timedBy(taps(IDLE, [at(0)]))).toBeUndefined();
  });

  it('times so many laps by start and stop, and takes no third tap', () => {
    const state = taps({ ...IDLE, way: 'whole', laps: 8 }, [at(0), at(40.2), at(50)]);
    expect(timedBy(state)).toMatchObject({ laps: 8 });
    expect(timedBy(state)!.time).toBeCloseTo(40.2, 6);
    expect(splitsOf(state)).toEqual([]);
    expect(state.done).toBe(true);
    expect(withoutLastTap(state).done).toBe(false);
  });

  it('is remembered over a reload, and nothing strange is', () => {
    const kept = new Map<string, string>();
    const before = globalThis.localStorage;
    const memory = {
      getItem: (key: string) => kept.get(key) ?? null,
      setItem: (key: string, text: string) => void kept.set(key, text),
      removeItem: (key: string) => void kept.delete(key),
    };
    Object.defineProperty(globalThis, 'localStorage', { value: memory, configurable: true });
    try {
      const state = taps(IDLE, [at(0), at(5)]);
      rememberTimer(state);
      expect(rememberedTimer()).toEqual(state);
      // Locked for ten minutes meanwhile, with the clock of the page standing still.
      expect(splitsOf(tapped(rememberedTimer(), at(605, 600)))[1]).toBeCloseTo(600, 6);
      kept.set('tetherwright.lap-timer', '{"way":"each","laps":10,"taps":[{"wall":"soon"}],"done":false}');
      expect(rememberedTimer()).toEqual(IDLE);
      kept.set('tetherwright.lap-timer', '{');
      expect(rememberedTimer()).toEqual(IDLE);
      rememberTimer(IDLE);
      expect(kept.size).toBe(0);
    } finally {
      Object.defineProperty(globalThis, 'localStorage', { value: before, configurable: true });
    }
  });

  it.each([
    [0, 1, '0:00.0'],
    [26.14, 1, '0:26.1'],
    [59.96, 1, '1:00.0'],
    [125.237, 2, '2:05.24'],
  ])('writes %d s with %d decimals as %s', (seconds, decimals, words) =>
    expect(clockWords(seconds, decimals)).toBe(words),
  );

  it('says its laps', () => {
    expect(lapsWords([])).toBe('No lap yet.');
    expect(lapsWords([5.021])).toBe('1 lap, the last 5.02\u00a0s, mean 5.02\u00a0s.');
    expect(lapsWords([5, 5.1])).toBe('2 laps, the last 5.10\u00a0s, mean 5.05\u00a0s.');
  });
});
