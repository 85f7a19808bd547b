import { positive } from './domain';

/**
 * a = a_0/(√(1 + x²) + x), x = a_0/(π A): lift slope (1/rad) of a straight wing of aspect ratio A and section slope a_0
 * (1/rad). Any aspect ratio; on rectangular flat plates it lies some 7 % above a lifting surface at A = 4 to 8 with a_0 = 2π.
 * Source: H. B. Helmbold (1942), as J. D. Anderson, Aircraft Performance and Design, eq. 2.18a.
 */
export function helmboldSlope(sectionSlope: number, aspectRatio: number): number {
  const x = positive('section slope', sectionSlope) / (Math.PI * positive('aspect ratio', aspectRatio));
  return sectionSlope / (Math.sqrt(1 + x * x) + x);
}

/**
 * a = 2π A/(2 + √(4 + (A/κ)² (1 + tan² Λ))), κ = a_0/2π: lift slope (1/rad) at low Mach number, with Λ the sweep of the
 * half-chord line (rad). With Λ = 0 and a_0 = 2π it is Helmbold's form.
 * Source: USAF DATCOM 4.1.3.2 after Polhamus (from memory).
 */
export function datcomSlope(sectionSlope: number, aspectRatio: number, halfChordSweep: number): number {
  const ratio = (2 * Math.PI * positive('aspect ratio', aspectRatio)) / positive('section slope', sectionSlope);
  const tan = Math.tan(halfChordSweep);
  return (2 * Math.PI * aspectRatio) / (2 + Math.sqrt(4 + ratio * ratio * (1 + tan * tan)));
}

/**
 * a = a_0/(1 + a_0 (1 + τ)/(π A)): lift slope (1/rad) by lifting line, τ the planform's departure from the ellipse.
 * Source: L. Prandtl; as J. D. Anderson, Fundamentals of Aerodynamics, ch. 5.
 */
export function liftingLineSlope(sectionSlope: number, aspectRatio: number, tau: number): number {
  const a0 = positive('section slope', sectionSlope);
  return a0 / (1 + (a0 * (1 + tau)) / (Math.PI * positive('aspect ratio', aspectRatio)));
}

/**
 * C_Di = C_L² (1 + δ)/(π A): induced drag coefficient, δ the planform's departure from the ellipse.
 * Source: as above.
 */
export function inducedDrag(liftCoefficient: number, aspectRatio: number, delta: number): number {
  return (liftCoefficient * liftCoefficient * (1 + delta)) / (Math.PI * positive('aspect ratio', aspectRatio));
}
