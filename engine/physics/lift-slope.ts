import { positive } from './domain';

/**
 * a = 2π A/(2 + √(4 + (A/κ)² (1 + tan² Λ))), κ = a_0/2π: lift slope (1/rad) at low Mach number, with Λ the sweep of the
 * half-chord line (rad). With Λ = 0 it is H. B. Helmbold's form (1942), a_0/(√(1 + x²) + x), x = a_0/(π A); on
 * rectangular flat plates it lies some 7 % above a lifting surface at A = 4 to 8 with a_0 = 2π.
 * Source: USAF DATCOM 4.1.3.2 after Polhamus (from memory); Helmbold as J. D. Anderson, Aircraft Performance and Design, eq. 2.18a.
 */
export function datcomSlope(sectionSlope: number, aspectRatio: number, halfChordSweep: number): number {
  const ratio = (2 * Math.PI * positive('aspect ratio', aspectRatio)) / positive('section slope', sectionSlope);
  const tan = Math.tan(halfChordSweep);
  return (2 * Math.PI * aspectRatio) / (2 + Math.sqrt(4 + ratio * ratio * (1 + tan * tan)));
}

/** What is left of a section that is a surface, not a line: u = 0.416/A. Fitted to the rectangular plates named at `wingSlope`. */
export const SURFACE_OVER_LINE = 0.416;

/**
 * a = a_l g(Λ)/[g(0) (1 + u + u²)],  u = 0.416/A: lift slope (1/rad) of a straight-tapered wing of aspect ratio A, from its slope a_l by lifting
 * line (unswept; it knows planform and section), g the form of `datcomSlope` with the sweep Λ of the half-chord line (rad).
 *
 * A lifting line takes the wing for thin in chord and lies 3 to 10 % high at A = 12 to 5. Within 1 % of a vortex lattice at A = 3 to 12 and tapers
 * from 0.4 to 1 unswept, 1.5 % to 30° of sweep; 2 % low at A = 2, lower below. Source: fitted to lifting-surface slopes of rectangular flat
 * plates, E. O. Tuck, J. Austral. Math. Soc. B 35 (1993) 127–144, over those of a lifting line; sweep as `datcomSlope`.
 */
export function wingSlope(
  lineSlope: number,
  sectionSlope: number,
  aspectRatio: number,
  halfChordSweep: number,
): number {
  const u = SURFACE_OVER_LINE / positive('aspect ratio', aspectRatio);
  const swept = datcomSlope(sectionSlope, aspectRatio, halfChordSweep) / datcomSlope(sectionSlope, aspectRatio, 0);
  return (positive('lift slope by lifting line', lineSlope) * swept) / (1 + u + u * u);
}

/**
 * k = 1/(π A e): C_D = C_D0 + k C_L², e span efficiency, 1/(1 + δ) where lift alone makes drag, δ the planform's departure from the ellipse.
 * Source: L. Prandtl; as J. D. Anderson, Fundamentals of Aerodynamics, ch. 5.
 */
export function inducedFactor(aspectRatio: number, efficiency: number): number {
  return 1 / (Math.PI * positive('aspect ratio', aspectRatio) * positive('span efficiency', efficiency));
}
