import { determine, leastSquares } from '../../numerics/index';
import { type CircleSound, heardShift } from './circle-shift';

/** Pitches heard one after another. */
export interface Track {
  /** When, s, and ln of each in Hz. */
  readonly times: Float64Array;
  readonly pitch: Float64Array;
}

/** A model on its circle as it is heard: what explains the swing of its pitch. */
export interface Swing extends CircleSound {
  /** Time of a lap, s, in the middle of the track, and the closest point nearest to there as it is heard. */
  readonly lap: number;
  readonly pass: number;
  /** Middle of the track, s. */
  readonly middle: number;
  /** ln of the pitch of the source in Hz there, and how it changes, 1/s. */
  readonly pitch: number;
  readonly drift: number;
  /** By which laps grow longer, s a second. */
  readonly longer: number;
  /** Standard deviation of one pitch about it, as a share. */
  readonly scatter: number;
  /** Standard errors. */
  readonly errors: { readonly lap: number; readonly mach: number; readonly ratio: number };
}

export interface LapRange {
  readonly shortest: number;
  readonly longest: number;
}

const TURN = 2 * Math.PI;
const BINS = 36;
/** Shapes that are tried: the ear far out, near the circle, and between. */
const RATIOS = [0.4, 0.6, 0.75, 0.87];
const MACH = 0.08;
/** By so many laps do the laps that are tried one after another differ over the whole track. */
const CLOSER = 0.06;

interface Guess {
  readonly lap: number;
  readonly pass: number;
  readonly mach: number;
  readonly ratio: number;
  /** Share of the variance that it explains. */
  readonly explained: number;
}

/**
 * The lap time whose swing explains most of a track: the track laid over itself lap by lap, and each shape of a swing compared with the
 * mean of that at each place of the lap..
 */
export function guessSwing({ times, pitch }: Track, { shortest, longest }: LapRange): Guess {
  const span = times.at(-1)! - times[0]!;
  const shapes = RATIOS.map((ratio) =>
    Float64Array.from({ length: BINS }, (_, b) => Math.log(heardShift(angleOf(b), { mach: MACH, ratio }))),
  );
  let best: Guess = { lap: Number.NaN, pass: 0, mach: 0, ratio: 0.6, explained: 0 };
  const mean = pitch.reduce((sum, value) => sum + value, 0) / pitch.length;
  const total = pitch.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  const most = Math.min(longest, span / 1.5);
  for (let turns = 1 / shortest; turns >= 1 / most; turns -= CLOSER / span) {
    const [sums, counts] = [new Float64Array(BINS), new Float64Array(BINS)];
    for (let k = 0; k < times.length; k++) {
      const bin = Math.floor((times[k]! * turns - Math.floor(times[k]! * turns)) * BINS) % BINS;
      sums[bin]! += pitch[k]! - mean;
      counts[bin]! += 1;
    }
    for (const [s, shape] of shapes.entries()) {
      for (let shift = 0; shift < BINS; shift++) {
        let [n, x, xx, y, xy] = [0, 0, 0, 0, 0];
        for (let b = 0; b < BINS; b++) {
          const value = shape[(b - shift + BINS) % BINS]!;
          n += counts[b]!;
          x += counts[b]! * value;
          xx += counts[b]! * value * value;
          y += sums[b]!;
          xy += value * sums[b]!;
        }
        const variance = xx - (x * x) / n;
        const shared = xy - (x * y) / n;
        const explained = shared > 0 ? (shared * shared) / variance / total : 0;
        if (explained > best.explained) {
          const mach = (MACH * shared) / variance;
          best = { lap: 1 / turns, pass: (shift + 0.5) / BINS / turns, mach, ratio: RATIOS[s]!, explained };
        }
      }
    }
  }
  return best;
}

/** The middle of a bin holds −π to π, its first at 0. */
const angleOf = (bin: number): number => {
  const angle = (TURN * bin) / BINS;
  return angle > Math.PI ? angle - TURN : angle;
};

/** Its shape is as well told by so many pitches as by thousands. */
const MOST_PITCHES = 140;

const thinned = ({ times, pitch }: Track, every: number): Track => ({
  times: times.filter((_, k) => k % every === 0),
  pitch: pitch.filter((_, k) => k % every === 0),
});

const LEAST_SCATTER = 2e-4;
/** What lies further off than so many standard deviations is taken to be something else. */
const STRAY = 3.5;

/**
 * The swing nearest to a track by least squares, from a guess: lap, closest point, pitch, β and q of `heardShift`, and how pitch and lap drift. What
 * strays is left out, and it is fitted again. `apart`: so many pitches one after another tell as much as one, for their pieces overlap.
 */
export function fitSwing(whole: Track, guess: Guess, apart: number): Swing | undefined {
  const every = Math.ceil(whole.times.length / MOST_PITCHES);
  const track = thinned(whole, every);
  const middle = (track.times[0]! + track.times.at(-1)!) / 2;
  const first = guess.pass + Math.round((middle - guess.pass) / guess.lap) * guess.lap;
  const mean = track.pitch.reduce((sum, value) => sum + value, 0) / track.pitch.length;
  let at = Float64Array.of(guess.lap, first, mean, 0, 0, Math.min(0.4, guess.mach), guess.ratio);
  let scatter = 0.01;
  let kept = track;
  let swing: Swing | undefined;
  for (let round = 0; round < 2; round++) {
    const problem = {
      start: at,
      low: Float64Array.of(0.9 * guess.lap, first - guess.lap / 2, mean - 0.5, -0.01, -0.02, 1e-3, 0.1),
      high: Float64Array.of(1.1 * guess.lap, first + guess.lap / 2, mean + 0.5, 0.01, 0.02, 0.5, 0.985),
      scale: Float64Array.of(0.02 * guess.lap, 0.05 * guess.lap, 0.02, 0.002, 0.003, 0.02, 0.1),
    };
    const residuals = (p: Float64Array) => {
      const now = swingOf(p, middle);
      return Float64Array.from(kept.times, (t, k) => (pitchAt(now, t) - kept.pitch[k]!) / scatter);
    };
    const found = leastSquares(problem, (points) => points.map(residuals));
    if (found.status === 'no answer') return undefined;
    at = Float64Array.from(found.parameters);
    const now = swingOf(at, middle);
    const off = Float64Array.from(track.times, (t, k) => track.pitch[k]! - pitchAt(now, t));
    const size = off.map(Math.abs).sort()[Math.floor(off.length / 2)]!;
    const s = Math.max(LEAST_SCATTER, 1.4826 * size);
    const { covariance } = determine(found.jacobian);
    const error = (j: number): number =>
      Math.sqrt(covariance[j]![j]! * Math.max(1, apart / every)) * problem.scale[j]! * (s / scatter);
    swing = { ...now, scatter: s, errors: { lap: error(0), mach: error(5), ratio: error(6) } };
    scatter = s;
    kept = {
      times: track.times.filter((_, k) => Math.abs(off[k]!) < STRAY * s),
      pitch: track.pitch.filter((_, k) => Math.abs(off[k]!) < STRAY * s),
    };
  }
  return swing;
}

const swingOf = ([lap, pass, pitch, drift, longer, mach, ratio]: Float64Array, middle: number): Swing => ({
  middle,
  ...{ lap: lap!, pass: pass!, pitch: pitch!, drift: drift!, longer: longer!, mach: mach!, ratio: ratio! },
  ...{ scatter: 0, errors: { lap: 0, mach: 0, ratio: 0 } },
});

/** ln of the pitch heard at time t. */
export function pitchAt(swing: Swing, t: number): number {
  const since = t - swing.pass;
  const turns = since / swing.lap - (swing.longer * since * since) / (2 * swing.lap * swing.lap);
  return (
    swing.pitch + swing.drift * (t - swing.middle) + Math.log(heardShift(TURN * (turns - Math.round(turns)), swing))
  );
}

/** β (2π/T)/(1 − q): how fast the pitch drops as the model passes the closest point, 1/s. Derivation: the slope of `heardShift` there. */
export const dropOf = ({ mach, lap, ratio }: Swing): number => (mach * TURN) / (lap * (1 - ratio));
