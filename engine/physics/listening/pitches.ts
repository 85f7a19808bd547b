import { combsOf } from './comb';
import { follow } from './follow';
import { FARTHEST_OFF, FASTEST_CHANGE, HARMONICS, HOP, PERIODS, PIECE, SHORTEST_SOUND, SWINGS } from './limits';
import { type Spectra, spectraOf } from './spectra';
import type { Track } from './swing';
import type { Question, Sound } from './told';

/** The tone followed through a sound. */
export interface Pitches {
  readonly track: Track;
  /** How it stands out in each piece, in standard deviations of the scores. */
  readonly clear: Float64Array;
  readonly spectra: Spectra;
  readonly harmonics: number;
  /** Tone that is expected, Hz. */
  readonly tone: number;
  /** So many pieces tell as much as one, for they overlap. */
  readonly apart: number;
}

/** Shares of the work. */
const SPECTRA_DONE = 0.7;
const COMBS_DONE = 0.85;
const PITCHES_DONE = 0.92;

/** Yields the share of the work that is done. */
export function* pitchesIn(
  { samples, rate }: Sound,
  { about, cycles }: Question,
): Generator<number, Pitches | 'short' | 'coarse' | 'silent'> {
  const tone = about * cycles;
  const highest = tone * FARTHEST_OFF * SWINGS;
  const harmonics = Math.min(HARMONICS.most, Math.floor((0.47 * rate) / highest - 0.5));
  if (samples.length < SHORTEST_SOUND * rate) return 'short';
  if (harmonics < HARMONICS.fewest) return 'coarse';
  if (!samples.some((value) => value !== 0)) return 'silent';
  const length = Math.min(PIECE.longest, Math.max(PIECE.shortest, PERIODS / tone));
  const hop = Math.max(HOP.least, HOP.share * length);
  const wish = { length, hop, top: highest * (harmonics + 0.6), apart: tone };
  const spectra = yield* asShare(spectraOf(samples, rate, wish), 0, SPECTRA_DONE);
  const lowest = tone / FARTHEST_OFF / SWINGS;
  const combs = yield* asShare(combsOf(spectra, { lowest, highest, harmonics }), SPECTRA_DONE, COMBS_DONE);
  const { pitch, clear } = follow(combs, spectra.count, spectra.hop, FASTEST_CHANGE);
  yield PITCHES_DONE;
  const times = Float64Array.from({ length: spectra.count }, (_, k) => spectra.first + k * spectra.hop);
  return { track: { times, pitch }, clear, spectra, harmonics, tone, apart: Math.max(1, length / spectra.hop) };
}

/** A part of the work as a share of the whole. */
function* asShare<T>(work: Generator<number, T>, from: number, to: number): Generator<number, T> {
  let step = work.next();
  for (; !step.done; step = work.next()) yield from + (to - from) * step.value;
  yield to;
  return step.value;
}
