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

/**
 * k = 1/(π A e): C_D = C_D0 + k C_L², e span efficiency, 1/(1 + δ) where lift alone makes drag, δ the planform's departure from the ellipse.
 * Source: L. Prandtl; as J. D. Anderson, Fundamentals of Aerodynamics, ch. 5.
 */
export function inducedFactor(aspectRatio: number, efficiency: number): number {
  return 1 / (Math.PI * positive('aspect ratio', aspectRatio) * positive('span efficiency', efficiency));
}
