import type { Combs } from './comb';

/** A pitch followed through a sound. */
export interface Followed {
  /** ln of the pitch in Hz, piece by piece. */
  readonly pitch: Float64Array;
  /** How it stands out in each piece, in standard deviations of the scores of all candidates. */
  readonly clear: Float64Array;
}

/** What a step of one candidate costs, in standard deviations of the scores. */
const COST = 0.35;

/**
 * The path through the pieces along which scores less costs of change sum up to most, by dynamic programming (R. Bellman, Dynamic
 * Programming (1957), from memory); between candidates by the parabola through three scores. `fastest`: change of pitch, 1/s.
 */
export function follow(combs: Combs, count: number, hop: number, fastest: number): Followed {
  const { candidates, step, lowest } = combs;
  const scores = standardised(combs, count);
  const reach = Math.max(1, Math.ceil((fastest * hop) / step));
  const back = new Int16Array(count * candidates);
  let best = scores.slice(0, candidates);
  for (let k = 1; k < count; k++) {
    const next = new Float32Array(candidates);
    for (let c = 0; c < candidates; c++) {
      let [most, from] = [Number.NEGATIVE_INFINITY, c];
      const last = Math.min(candidates - 1, c + reach);
      for (let b = Math.max(0, c - reach); b <= last; b++) {
        const value = best[b]! - COST * Math.abs(b - c);
        if (value > most) [most, from] = [value, b];
      }
      next[c] = most + scores[k * candidates + c]!;
      back[k * candidates + c] = from;
    }
    best = next;
  }
  const pitch = new Float64Array(count);
  const clear = new Float64Array(count);
  let at = best.indexOf(Math.max(...best));
  for (let k = count - 1; k >= 0; k--) {
    const row = k * candidates;
    pitch[k] = Math.log(lowest) + step * (at + between(scores, row, at, candidates));
    clear[k] = scores[row + at]!;
    if (k > 0) at = back[row + at]!;
  }
  return { pitch, clear };
}

/** Each piece with mean 0 and standard deviation 1. */
function standardised({ scores, candidates }: Combs, count: number): Float32Array {
  const made = new Float32Array(scores.length);
  for (let k = 0; k < count; k++) {
    const row = scores.subarray(k * candidates, (k + 1) * candidates);
    let [sum, squares] = [0, 0];
    for (const score of row) {
      sum += score;
      squares += score * score;
    }
    const mean = sum / candidates;
    const deviation = Math.sqrt(Math.max(1e-12, squares / candidates - mean * mean));
    for (let c = 0; c < candidates; c++) made[k * candidates + c] = (row[c]! - mean) / deviation;
  }
  return made;
}

/** Where between −½ and ½ the top of the parabola through three neighbours stands. */
function between(scores: Float32Array, row: number, at: number, candidates: number): number {
  if (at === 0 || at === candidates - 1) return 0;
  const [a, b, c] = [scores[row + at - 1]!, scores[row + at]!, scores[row + at + 1]!];
  const bend = a - 2 * b + c;
  return bend < 0 ? Math.max(-0.5, Math.min(0.5, (0.5 * (a - c)) / bend)) : 0;
}
