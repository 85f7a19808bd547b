import { useEffect, useState } from 'preact/hooks';
import type { LogCell } from '../../../../engine/index';
import { along } from '../../../controls/along';
import { useSheet } from '../../../store/context';
import { type FlightReadings, putReadings } from '../readings';
import { momentOf, secondsBetween } from './clock';
import { rememberedTimer, rememberTimer } from './remembered';
import { IDLE, splitsOf, type TimerState, tapped, timedBy, withoutLastTap } from './state';
import { clockWords, lapsWords } from './words';

const SHOWN_EVERY = 100;

/** Times laps by the clock: one tap a lap, or start and stop for so many. */
export function LapTimer({ cell, onPut }: { cell: LogCell; onPut(row: number): void }) {
  const sheet = useSheet();
  const [state, setState] = useState<TimerState>(rememberedTimer);
  const runs = state.taps.length > 0 && !state.done;
  const [, redraw] = useState(0);
  const change = (next: TimerState): void => {
    rememberTimer(next);
    setState(next);
  };
  useEffect(() => {
    if (!runs) return undefined;
    const timer = setInterval(() => redraw((count) => count + 1), SHOWN_EVERY);
    return () => clearInterval(timer);
  }, [runs]);
  const splits = splitsOf(state);
  const timed = timedBy(state);
  const whole = state.way === 'whole';
  const begun = state.taps[0];
  const shown = runs && begun ? secondsBetween(begun, momentOf()) : (timed?.time ?? 0);
  const put = (): void => {
    if (!timed) return;
    const readings: FlightReadings = whole ? { timed } : { splits };
    const place = putReadings(sheet, readings, { log: cell.name });
    if (!place) return;
    change(IDLE);
    onPut(place.row);
  };
  return (
    <details class="set-up lap-timer" open={state.taps.length > 0}>
      <summary {...along()}>Lap timer</summary>
      <div class="timer-ways">
        {(['each', 'whole'] as const).map((way) => (
          <label key={way}>
            <input
              type="radio"
              name={`${cell.id}-timer-way`}
              checked={state.way === way}
              disabled={state.taps.length > 0}
              onChange={() => change({ ...state, way })}
            />
            {way === 'each' ? 'Tap each lap' : 'Start and stop for'}
          </label>
        ))}
        <label>
          <input
            class="timer-laps"
            type="text"
            inputmode="numeric"
            aria-label="Laps between start and stop"
            value={String(state.laps)}
            disabled={!whole || state.taps.length > 0}
            onChange={({ currentTarget }) => {
              const laps = Number(currentTarget.value);
              if (Number.isInteger(laps) && laps > 0 && laps < 1000) change({ ...state, laps });
              else currentTarget.value = String(state.laps);
            }}
          />{' '}
          laps
        </label>
      </div>
      <output class="timer-clock">{clockWords(shown, runs ? 1 : 2)}</output>
      <button
        type="button"
        class="timer-tap"
        disabled={state.done}
        onPointerDown={(event) => {
          if (event.button === 0) change(tapped(state, momentOf(event)));
        }}
        onKeyDown={(event) => {
          if ((event.key !== 'Enter' && event.key !== ' ') || event.repeat) return;
          event.preventDefault();
          change(tapped(state, momentOf(event)));
        }}
      >
        {begun === undefined ? 'Start' : whole ? 'Stop' : 'Lap'}
      </button>
      {!whole && <p role="status">{lapsWords(splits)}</p>}
      {splits.length > 0 && <p class="aside">{splits.map((time) => time.toFixed(2)).join('  ')} s</p>}
      <div class="log-line">
        {state.taps.length > 0 && (
          <button type="button" class="word" onClick={() => change(withoutLastTap(state))}>
            Take back the last tap
          </button>
        )}
        {timed && (
          <button type="button" class="word" onClick={put}>
            Put into a new flight
          </button>
        )}
        {state.taps.length > 0 && (
          <button
            type="button"
            class="word quiet"
            onClick={() => change({ ...IDLE, way: state.way, laps: state.laps })}
          >
            Forget it
          </button>
        )}
      </div>
      <p class="aside">
        The time runs by the clock: it holds while the screen is locked or the page is loaded again. The pilot watches
        the model, a helper taps.
      </p>
    </details>
  );
}
