import { findRoot } from '../../numerics/index';

const TURN = 2 * Math.PI;

/** One way to come to rest at the goal: azimuth of shutting off, and the whole angle from there to the stop, rad. */
interface ShutOff {
  readonly azimuth: number;
  readonly whole: number;
}

export interface ShutOffs {
  /** Those that shut off latest first. */
  readonly ways: readonly ShutOff[];
  /** Glides flown. */
  readonly iterations: number;
}

/** Azimuths looked at around the circle. */
const PLACES = 24;
/** rad. */
const NEAR = 1e-6;
/** Left over at a root, rad. */
const ROOT = 1e-3;

/**
 * All azimuths θ of shutting off from which a model comes to rest at a goal:
 *
 *   θ + Θ(θ) = θ_p + 2π k,  Θ(θ) the whole angle of glide and run-out from θ, NaN where that glide can't be flown
 *
 * Θ goes around with θ, so that what is left over rises by 2π from θ to θ + 2π: between two neighbours of 24 places where it passes a whole turn
 * there is one, found by a bracket. Where Θ falls faster than θ rises, in wind, there are several, an odd number unless some glides can't be
 * flown; which of them is met hangs on the lap in which the pilot shuts off. `whole` is asked at azimuths from 0 to 2π.
 * Derivation: the angles add up.
 */
export function shutOffs(whole: (azimuth: number) => number, goal: number): ShutOffs {
  let iterations = 0;
  const over = (azimuth: number): number => {
    iterations += 1;
    return azimuth + whole(azimuth % TURN) - goal;
  };
  const step = TURN / PLACES;
  const ways: ShutOff[] = [];
  const first = over(0);
  let before = first;
  for (let k = 1; k <= PLACES; k++) {
    const here = k === PLACES ? first + TURN : over(k * step);
    if (Number.isFinite(before) && Number.isFinite(here)) {
      const [low, high] = [Math.min(before, here), Math.max(before, here)];
      for (let turn = Math.ceil(low / TURN); turn * TURN < high; turn++) {
        const left = (azimuth: number): number => over(azimuth) - turn * TURN;
        const root = findRoot(left, (k - 1) * step, k * step, { tolerance: NEAR, steps: 30 });
        // A glide that can't be flown, or one that just misses its end a lap sooner, makes a step and no root.
        if (!(Math.abs(root.residual) < ROOT)) continue;
        ways.push({ azimuth: root.value % TURN, whole: goal + turn * TURN - root.value });
      }
    }
    before = here;
  }
  return { ways: ways.sort((a, b) => a.whole - b.whole), iterations };
}
