import { EXPLAINED, LAPS_HEARD, UNSTEADY } from './limits';
import { medianOf } from './median';
import { fitSwing, guessSwing, pitchAt, type Swing, type Track } from './swing';

/** A swing is looked for in so many seconds at a time: laps change during a flight. */
const BLOCK = 24;
/** A guess that explains less isn't worth a fit. */
const WORTH_A_FIT = 0.5;
/** Slower than this share of the speed of sound nothing flies. */
const SLOWEST = 0.01;

/** The swing of the part of a sound where one is heard best; undefined where none explains the pitches. */
export function bestSwing(track: Track, apart: number): Swing | undefined {
  const { times } = track;
  const first = times[0]!;
  const span = times.at(-1)! - first;
  let best: { readonly part: Track; readonly guess: ReturnType<typeof guessSwing> } | undefined;
  for (let from = 0; from === 0 || from + BLOCK <= span; from += BLOCK / 2) {
    const inside = (_: number, k: number): boolean => times[k]! >= first + from && times[k]! <= first + from + BLOCK;
    const part = { times: times.filter(inside), pitch: track.pitch.filter(inside) };
    const guess = guessSwing(part, LAPS_HEARD);
    if (!best || guess.explained > best.guess.explained) best = { part, guess };
  }
  if (!best || !(best.guess.explained > WORTH_A_FIT)) return undefined;
  const swing = fitSwing(best.part, best.guess, apart);
  if (!swing || swing.scatter > UNSTEADY || swing.mach < SLOWEST) return undefined;
  return explainedBy(best.part, swing) < EXPLAINED ? undefined : swing;
}

/** Share of the spread of the pitches, by their medians, that a swing explains. */
function explainedBy({ times, pitch }: Track, swing: Swing): number {
  const centre = medianOf(pitch);
  const before = medianOf(pitch.map((value) => Math.abs(value - centre)));
  const after = medianOf(pitch.map((value, k) => Math.abs(value - pitchAt(swing, times[k]!))));
  return 1 - (after / before) ** 2;
}
