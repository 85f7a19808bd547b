import { nonNegative, within } from './domain';

/** Volumes of what models are built of, from what a ruler gives. SI throughout: m and m³. */

/** v = l a b: strip or square of length l and sides a, b (m). Derivation: prism. */
export function stripVolume(length: number, width: number, thickness: number): number {
  return nonNegative('length', length) * nonNegative('width', width) * nonNegative('thickness', thickness);
}

/**
 * v = π (d − t) t l: round tube of length l, outer diameter d and wall t (m); a wall of half the diameter and more fills it, t = d/2.
 * Derivation: difference of two circles.
 */
export function tubeVolume(length: number, diameter: number, wall: number): number {
  const d = nonNegative('diameter', diameter);
  const t = Math.min(nonNegative('wall', wall), d / 2);
  return Math.PI * (d - t) * t * nonNegative('length', length);
}

/**
 * v = l [(a_1 t_1 + a_2 t_2)/3 + (a_1 t_2 + a_2 t_1)/6]: sheet of length l whose width goes straight from a_1 to a_2 and whose thickness
 * from t_1 to t_2 (m). NaN at the other end: as at the first. Derivation: integral of the product of two straight tapers.
 */
export function taperedVolume(
  length: number,
  width: number,
  widthEnd: number,
  thickness: number,
  thicknessEnd: number,
): number {
  const a1 = nonNegative('width', width);
  const t1 = nonNegative('thickness', thickness);
  const a2 = Number.isNaN(widthEnd) ? a1 : nonNegative('width at the other end', widthEnd);
  const t2 = Number.isNaN(thicknessEnd) ? t1 : nonNegative('thickness at the other end', thicknessEnd);
  return nonNegative('length', length) * ((a1 * t1 + a2 * t2) / 3 + (a1 * t2 + a2 * t1) / 6);
}

/** v = ½ a h l: prism of length l over a triangle of base a and height h (m): triangle stock, a gusset. Derivation: area of a triangle. */
export function triangleVolume(length: number, width: number, height: number): number {
  return 0.5 * nonNegative('length', length) * nonNegative('width', width) * nonNegative('height', height);
}

/** Thickness of the four-digit sections over their chord: ± 5 t/c (Σ a_k ξ^p_k), E. N. Jacobs, K. E. Ward and R. M. Pinkerton, NACA Report 460, 1933. */
const FOUR_DIGITS = [
  [0.2969, 0.5],
  [-0.126, 1],
  [-0.3516, 2],
  [0.2843, 3],
  [-0.1015, 4],
] as const;

/**
 * Area of a section over chord times thickness: 10 Σ a_k/(p_k + 1) = 0.685, the integral of both halves of a four-digit thickness. Camber moves
 * it and changes it by less than a hundredth.
 */
export const SECTION_FILL = FOUR_DIGITS.reduce((sum, [a, p]) => sum + (10 * a) / (p + 1), 0);

/**
 * v = 0.685 (t/c) l (c_1² + c_1 c_2 + c_2²)/3 · (1 − s): body of length l (m) whose wing section, of thickness t/c of its chord, tapers straight
 * from chord c_1 to c_2 (m), with the share s (0 to 1) cut away: a foam core of span l; a rib as the middle one of a tapered row, l its thickness.
 * NaN for c_2: no taper. Derivation: integral of the squared chord over a straight taper; four-digit sections.
 */
export function sectionVolume(
  length: number,
  chord: number,
  tipChord: number,
  thicknessRatio: number,
  cutAway: number,
): number {
  const c1 = nonNegative('chord', chord);
  const c2 = Number.isNaN(tipChord) ? c1 : nonNegative('tip chord', tipChord);
  const meanSquare = (c1 * c1 + c1 * c2 + c2 * c2) / 3;
  const area = SECTION_FILL * nonNegative('thickness over chord', thicknessRatio) * meanSquare;
  return nonNegative('length', length) * area * (1 - within('share cut away', cutAway, 0, 1));
}
