import { within } from '../domain';

/** How a source on a circle is heard at a point beside it. */
export interface CircleSound {
  /** β = v/c: speed of the source over that of sound. */
  readonly mach: number;
  /** q = R/D: radius of the circle over the distance from its middle to the ear, 0 < q < 1. */
  readonly ratio: number;
}

const FASTEST = 0.9;
const NEAREST = 1e-3;
const STEPS = 12;
const RESTS = 1e-12;

/**
 * Frequency heard over that of the source, and where the source was when it gave the sound off (rad from the point nearest to the
 * ear), at the angle ψ = 2π t/T (rad) after the sound of a closest point has come in.
 *
 *   s(θ) = √(1 + q² − 2 q cos θ),  ψ = θ + (β/q) (s(θ) − 1 + q),  f/f₀ = 1/(1 + β sin θ/s(θ))
 *
 * θ by Newton's method: the sound has come all the way r = D s(θ) at speed c, and v_r = dr/dt = v sin θ/s(θ). Circle and ear in one plane, air
 * at rest, β < 1. Derivation: C. Doppler's principle, P. M. Morse and K. U. Ingard, Theoretical Acoustics (1968), chapter 11 (from memory).
 */
export function heardShift(psi: number, { mach, ratio }: CircleSound): number {
  within('speed over that of sound', mach, 0, FASTEST);
  within('radius over distance', ratio, NEAREST, 1 - NEAREST);
  let theta = psi;
  for (let step = 0; step < STEPS; step++) {
    const s = Math.sqrt(1 + ratio * ratio - 2 * ratio * Math.cos(theta));
    const by = (theta + (mach / ratio) * (s - 1 + ratio) - psi) / (1 + (mach * Math.sin(theta)) / s);
    theta -= by;
    if (Math.abs(by) < RESTS) break;
  }
  const s = Math.sqrt(1 + ratio * ratio - 2 * ratio * Math.cos(theta));
  return 1 / (1 + (mach * Math.sin(theta)) / s);
}
