import { positive } from '../domain';
import type { PreparedPropeller } from './blade-elements';

/** Thickness over chord: 12 % at the tip, growing to the hub; area of a section over chord × thickness; the hub over D. Guesses. */
export const TIP_THICKNESS = 0.12;
export const ROOT_THICKNESS = 0.25;
export const SECTION_FULLNESS = 0.7;
const HUB_DIAMETER = 0.09;
const HUB_LENGTH = 0.045;

/**
 * Mass (kg) and moment of inertia about the shaft (kg·m²) of a propeller from its chords.
 *
 *   t/c = 0.12 + 0.25 (1 − r/R)²,  A = 0.7 t c
 *   m = B ρ ∫ A dr + hub,  I = B ρ ∫ A r² dr
 *
 * ρ density of its material (kg/m³), hub a cylinder of 0.09 D, 0.045 D long. Thickness, fullness and hub are guesses without
 * a source; a weighed propeller is better.
 */
export function propellerMass(p: PreparedPropeller, density: number): { mass: number; inertia: number } {
  const radius = positive('propeller diameter', p.diameter) / 2;
  let [volume, second] = [0, 0];
  for (let k = 0; k < p.radius.length; k++) {
    const x = p.radius[k]!;
    const chord = p.chord[k]! * radius;
    const area = SECTION_FULLNESS * (TIP_THICKNESS + ROOT_THICKNESS * (1 - x) ** 2) * chord * chord;
    const piece = p.blades * area * p.weight[k]! * radius;
    volume += piece;
    second += piece * (x * radius) ** 2;
  }
  const hub = (Math.PI / 4) * (HUB_DIAMETER * p.diameter) ** 2 * HUB_LENGTH * p.diameter;
  const heavy = positive('density of the propeller', density);
  return { mass: heavy * (volume + hub), inertia: heavy * (second + (hub * (HUB_DIAMETER * p.diameter) ** 2) / 8) };
}
