import type { Spectra } from './spectra';

/** How well each pitch fits each piece of a sound. */
export interface Combs {
  /** Pitch of candidate c: lowest · e^(c · step), Hz. */
  readonly lowest: number;
  readonly step: number;
  readonly candidates: number;
  /** Of each piece and candidate. */
  readonly scores: Float32Array;
}

interface Wish {
  readonly lowest: number;
  readonly highest: number;
  readonly harmonics: number;
}

/** So many pieces between two words of progress. */
const PIECES = 500;
/** Steps of pitch: less than what pieces tell apart, and refined between them. */
const STEP = 0.004;
/** What lies beside a line is read so far from it, in pitches: not halfway, where an engine that fires every second turn has lines too. */
const ASIDE = 0.32;

/**
 * S(f) = (1/H) Σ_h [L(h f) − ½ L((h − a) f) − ½ L((h + a) f)],  h = 1 … H: the sum over harmonics, less what lies beside each. L level over the floor. Yields the share that is done. Source: the harmonic sum of D. J. Hermes,
 * J. Acoust. Soc. Am. 83 (1988) 257–264 (from memory); what stands between: derivation.
 */
export function* combsOf(spectra: Spectra, { lowest, highest, harmonics }: Wish): Generator<number, Combs> {
  const candidates = Math.floor(Math.log(highest / lowest) / STEP) + 1;
  const orders = Array.from({ length: harmonics }, (_, h) => [h + 1 - ASIDE, h + 1, h + 1 + ASIDE]).flat();
  const teeth = orders.length;
  const [at, part] = [new Int32Array(candidates * teeth), new Float32Array(candidates * teeth)];
  for (let c = 0; c < candidates; c++) {
    for (let j = 0; j < teeth; j++) {
      const place = (orders[j]! * lowest * Math.exp(c * STEP)) / spectra.line;
      at[c * teeth + j] = Math.floor(place);
      part[c * teeth + j] = place - Math.floor(place);
    }
  }
  const weights = Float32Array.from({ length: teeth }, (_, j) => (j % 3 === 1 ? 1 : -0.5) / harmonics);
  const scores = new Float32Array(spectra.count * candidates);
  const { levels, lines } = spectra;
  for (let k = 0; k < spectra.count; k++) {
    if (k % PIECES === PIECES - 1) yield k / spectra.count;
    const row = k * lines;
    for (let c = 0; c < candidates; c++) {
      let sum = 0;
      for (let j = 0, i = c * teeth; j < teeth; j++, i++) {
        const place = row + at[i]!;
        const level = levels[place]! + part[i]! * (levels[place + 1]! - levels[place]!);
        sum += weights[j]! * level;
      }
      scores[k * candidates + c] = sum;
    }
  }
  return { lowest, step: STEP, candidates, scores };
}
