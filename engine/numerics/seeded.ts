import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import type { Random } from './latin-hypercube';

/** Evenly spread numbers that a whole number as seed always gives again. */
export function seededRandom(seed: number): Random {
  if (!Number.isInteger(seed)) throw new RangeError(`seed is ${seed}; it must be a whole number`);
  const generator = xoroshiro128plus(seed);
  return () => uniformFloat64(generator);
}
