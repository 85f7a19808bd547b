/** Random numbers from a seed (mulberry32), the same on every machine. */
export interface Random {
  /** 0 ≤ x < 1. */
  next(): number;
  /** 0 ≤ k < n. */
  below(n: number): number;
  pick<T>(list: readonly T[]): T;
}

export function randomFrom(seed: number): Random {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  const below = (n: number): number => Math.floor(next() * n);
  return { next, below, pick: (list) => list[below(list.length)]! };
}
