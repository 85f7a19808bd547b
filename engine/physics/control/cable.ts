import { positive } from '../domain';

/** A cable from a hole of the bellcrank to what it pulls at, both in one plane; turned by t it is pulled, rad. */
export interface Cable {
  /** From the pivot to the hole, m. */
  readonly arm: number;
  /** From the hole to where the cable is led on, bellcrank square, m. */
  readonly length: number;
  /** Between arm and cable there, rad: a right angle pulls most at first. */
  readonly angle: number;
}

/** Pivot to the place where the cable is led on, and the angle there between it and the arm. */
function triangle({ arm, length, angle }: Cable): { base: number; corner: number } {
  const [across, along] = [length * Math.sin(angle), arm - length * Math.cos(angle)];
  return { base: Math.hypot(along, across), corner: Math.atan2(across, along) };
}

/**
 * s = √(a² + g² − 2 a g cos(ψ + t)) − c: what a turn t (rad) pulls of a cable (m): arm a, c from its hole to where it is led on, g and ψ distance
 * of that from the pivot and its angle to the arm before the turn. Source: law of cosines.
 */
export function cablePulled(cable: Cable, turn: number): number {
  const { base, corner } = triangle(cable);
  const { arm, length } = cable;
  return Math.sqrt(arm * arm + base * base - 2 * arm * base * Math.cos(corner + turn)) - length;
}

/** Lever arm of the cable about the pivot with the bellcrank turned by t, m: the derivative of `cablePulled`. */
export function cableLever(cable: Cable, turn: number): number {
  const { base, corner } = triangle(cable);
  const length = cable.length + cablePulled(cable, turn);
  return (cable.arm * base * Math.sin(corner + turn)) / positive('length of the cable', length);
}

/** t = arccos[(a² + g² − (c + s)²)/(2 a g)] − ψ: turn that pulls s of a cable; NaN where no turn does. The inverse of `cablePulled`. */
export function turnToPull(cable: Cable, pulled: number): number {
  const { base, corner } = triangle(cable);
  const { arm, length } = cable;
  return Math.acos((arm * arm + base * base - (length + pulled) ** 2) / (2 * arm * base)) - corner;
}
