import { LAPS_DIFFER, ROUGH_LAP } from './limits';
import { medianOf } from './median';
import type { Pass } from './passes';
import { pitchAt, type Swing, type Track } from './swing';
import type { Told } from './told';

export interface LapInTrack {
  /** When its first closest point was heard, s. */
  readonly from: number;
  readonly time: Told;
  /** Tone of the source, Hz: by the mean over the lap, and by its swing. */
  readonly tone: number;
  readonly bySwing: number;
  /** Pitches that were heard in it, and what the swing makes of each, Hz. */
  readonly pieces: readonly number[];
  readonly fitted: readonly number[];
}

/** A pitch that lies further off than so many standard deviations is something else; in a lap so many of them may be. */
const STRAY = 4;
const MOST_STRAY = 0.2;

/**
 * Laps between passes that follow each other, and the tone of the source in each:
 *
 *   f₀ = (1/T) ∫ f dt over a whole lap
 *
 * for as many periods come in during a lap as are given off: the way is as long at its end as at its beginning. Speed of sound, radius and
 * distance don't enter. What strays is replaced by what the swing says. Derivation.
 */
export function lapsIn(track: Track, swing: Swing, passes: readonly (Pass | undefined)[]): readonly LapInTrack[] {
  return passes.flatMap((after, k) => {
    const before = passes[k - 1];
    const lap = before && after && lapBetween(track, swing, before, after);
    return lap ? [lap] : [];
  });
}

function lapBetween(track: Track, swing: Swing, before: Pass, after: Pass): LapInTrack | undefined {
  const time = { value: after.at - before.at, error: Math.hypot(before.error, after.error) };
  if (time.error > ROUGH_LAP * time.value) return undefined;
  const pieces = [...track.times.keys()].filter((i) => track.times[i]! > before.at && track.times[i]! <= after.at);
  const own = { ...swing, lap: time.value, pass: before.at, longer: 0, drift: 0, pitch: 0 };
  const shape = pieces.map((i) => pitchAt(own, track.times[i]!));
  const level = medianOf(pieces.map((i, n) => track.pitch[i]! - shape[n]!));
  const far = STRAY * Math.max(LAPS_DIFFER, swing.scatter);
  const strays = pieces.map((i, n) => Math.abs(track.pitch[i]! - shape[n]! - level) > far);
  if (strays.filter(Boolean).length > MOST_STRAY * pieces.length) return undefined;
  const fitted = shape.map((value) => Math.exp(value + level));
  const heard = pieces.map((i, n) => (strays[n] ? fitted[n]! : Math.exp(track.pitch[i]!)));
  return {
    ...{ from: before.at, time, pieces, fitted },
    bySwing: Math.exp(level),
    tone: heard.reduce((sum, f) => sum + f, 0) / heard.length,
  };
}
