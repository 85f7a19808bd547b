import { hannWindow, powerSpectrum } from '../../numerics/index';

/** Spectra of short pieces of a sound, one after another. */
export interface Spectra {
  /** Time of the middle of the first piece and from one to the next, s. */
  readonly first: number;
  readonly hop: number;
  readonly count: number;
  /** Hz from one line to the next, and how many lines there are. */
  readonly line: number;
  readonly lines: number;
  /** Length of a piece, s. */
  readonly length: number;
  /** ln(1 + P/P₀) of each line, piece by piece: P₀ is what is heard there between the tones. */
  readonly levels: Float32Array;
}

export interface SpectraWish {
  readonly length: number;
  readonly hop: number;
  /** Nothing above this is asked for, Hz. */
  readonly top: number;
  /** Tones stand this far apart, Hz: the floor between them is looked for over such a span. */
  readonly apart: number;
}

/** So many pieces between two words of progress. */
const PIECES = 200;
/** The floor is what this share of the pieces stay below; so many of them are looked at. */
const QUIET_SHARE = 0.35;
const LOOKED_AT = 80;

/**
 * Short-time spectra of a sound, brought to the floor of noise: wind is loud where it is low. A piece is `length` s under a Hann window, filled up with
 * as many zeros, so that lines lie twice as close as pieces tell apart. Yields the share that is done.
 */
export function* spectraOf(sound: Float32Array, rate: number, wish: SpectraWish): Generator<number, Spectra> {
  const size = Math.round(wish.length * rate);
  const padded = 2 ** Math.ceil(Math.log2(2 * size));
  const step = Math.round(wish.hop * rate);
  const line = rate / padded;
  const lines = Math.min(padded / 2, Math.ceil(wish.top / line) + 2);
  const count = Math.max(0, Math.floor((sound.length - size) / step) + 1);
  const window = hannWindow(size);
  const piece = new Float64Array(padded);
  const levels = new Float32Array(count * lines);
  for (let k = 0; k < count; k++) {
    for (let n = 0; n < size; n++) piece[n] = window[n]! * sound[k * step + n]!;
    powerSpectrum(piece, levels.subarray(k * lines, (k + 1) * lines));
    if (k % PIECES === PIECES - 1) yield k / count;
  }
  const floor = floorOf(levels, count, lines, Math.round((0.75 * wish.apart) / line));
  for (let k = 0; k < count; k++) {
    for (let i = 0; i < lines; i++) levels[k * lines + i] = Math.log1p(levels[k * lines + i]! / floor[i]!);
  }
  return { first: size / 2 / rate, hop: step / rate, count, line, lines, length: size / rate, levels };
}

/** What is heard at each line while no tone stands there: quiet in time, and the middle of what lies around it. */
function floorOf(power: Float32Array, count: number, lines: number, reach: number): Float64Array {
  const every = Math.max(1, Math.floor(count / LOOKED_AT));
  const seen = new Float64Array(Math.ceil(count / every));
  const quiet = Float64Array.from({ length: lines }, (_, i) => {
    for (let n = 0; n < seen.length; n++) seen[n] = power[n * every * lines + i]!;
    return seen.sort()[Math.floor(QUIET_SHARE * seen.length)] ?? 0;
  });
  const least = Number.MIN_VALUE + 1e-12 * Math.max(...quiet);
  return quiet.map((_, i) => {
    const around = quiet.slice(Math.max(0, i - reach), i + reach + 1).sort();
    return Math.max(least, around[Math.floor(around.length * 0.4)]!);
  });
}
