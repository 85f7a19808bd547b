/** Set by `npm run test:long`: every random case is tried, and not a fifth of them. */
const LONG = process.env.TESTS_LONG === '1';
const SHARE = 0.2;

/** How many random cases to try: all of them in `npm run test:long`, a fifth in `npm test`. Seeds are the same in both. */
export const cases = (all: number): number => (LONG ? all : Math.ceil(all * SHARE));

/** The first of a list of seeds, as many as there are cases. */
export const someOf = <T>(seeds: readonly T[]): readonly T[] => seeds.slice(0, cases(seeds.length));

/** Of a grid in order: all of it, or as many places evenly over it. */
export const everyFew = <T>(grid: readonly T[]): readonly T[] =>
  LONG ? grid : grid.filter((_, k) => k % Math.round(1 / SHARE) === 0);
