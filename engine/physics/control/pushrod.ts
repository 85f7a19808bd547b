import { positive } from '../domain';

/**
 * Pushrod from a hole of the bellcrank, which turns in a level plane, to the horn of the elevator, which turns in an upright one: m, x aft, y
 * outboard, z up. The elevator turns by δ, trailing edge up positive.
 */
export interface Pushrod {
  readonly pivotX: number;
  readonly pivotY: number;
  /** Height of the hole in the bellcrank. */
  readonly plane: number;
  /** From the pivot to the hole, and its direction at no turn: anticlockwise from aft toward outboard, rad. */
  readonly arm: number;
  readonly direction: number;
  /** Eye to eye. */
  readonly length: number;
  /** Hinge line, and the place of the horn along it. */
  readonly hingeX: number;
  readonly hingeZ: number;
  readonly hornY: number;
  /** From the hinge line to the hole of the horn, and its direction at no elevator: from aft upward, rad. */
  readonly horn: number;
  readonly hornDirection: number;
  /** Which of the two ways in which it can be put together: the sign of sin(horn − line to the bellcrank's hole). */
  readonly branch: 1 | -1;
}

export interface PushrodState {
  /** δ; NaN where the pushrod doesn't close. */
  elevator: number;
  /** dδ/dβ. */
  gain: number;
  /** Lever arms of the pushrod about the pivot and about the hinge, m: the same sign moves it the same way. */
  crankLever: number;
  hornLever: number;
  crankX: number;
  crankY: number;
  hornX: number;
  hornZ: number;
}

export const newPushrodState = (): PushrodState => ({
  elevator: Number.NaN,
  gain: Number.NaN,
  crankLever: Number.NaN,
  hornLever: Number.NaN,
  crankX: Number.NaN,
  crankY: Number.NaN,
  hornX: Number.NaN,
  hornZ: Number.NaN,
});

type Ends = Omit<Pushrod, 'length' | 'branch'>;

/** From eye to eye with the bellcrank turned by β and the elevator at δ: the length that joins them there, m. Geometry. */
export function pushrodBetween(p: Ends, turn: number, elevator: number): number {
  const crank = p.direction + turn;
  const horn = p.hornDirection + elevator;
  return Math.hypot(
    p.hingeX + p.horn * Math.cos(horn) - p.pivotX - p.arm * Math.cos(crank),
    p.hornY - p.pivotY - p.arm * Math.sin(crank),
    p.hingeZ + p.horn * Math.sin(horn) - p.plane,
  );
}

/** The way of putting it together in which the elevator stands at δ with the bellcrank turned by β. */
export function branchAt(p: Ends, turn: number, elevator: number): 1 | -1 {
  const toward = Math.atan2(p.plane - p.hingeZ, p.pivotX + p.arm * Math.cos(p.direction + turn) - p.hingeX);
  return Math.sin(p.hornDirection + elevator - toward) < 0 ? -1 : 1;
}

/**
 * cos(ζ − φ) = (h² + D² − ρ²)/(2 h D),  ρ² = l² − Δy²: direction ζ of the horn where the circle of its hole (radius h about the hinge) meets
 * the circle in the horn's plane of all places that the pushrod of length l reaches from the hole of the bellcrank, which stands Δy beside that
 * plane and at the distance D and direction φ from the hinge. Lever arms are the pushrod's direction against the ways of its ends; dδ/dβ
 * is their ratio. Exact. Derivation: intersection of two circles.
 */
export function closePushrod(p: Pushrod, turn: number, out: PushrodState): void {
  const crank = p.direction + turn;
  const [crankU, crankV] = [p.arm * Math.cos(crank), p.arm * Math.sin(crank)];
  out.crankX = p.pivotX + crankU;
  out.crankY = p.pivotY + crankV;
  const beside = p.hornY - out.crankY;
  const [a, b] = [out.crankX - p.hingeX, p.plane - p.hingeZ];
  const square = positive('pushrod length', p.length) ** 2 - beside * beside;
  const cosine = (p.horn * p.horn + a * a + b * b - square) / (2 * positive('horn', p.horn) * Math.sqrt(a * a + b * b));
  const horn = Math.atan2(b, a) + p.branch * Math.acos(square >= 0 ? cosine : Number.NaN);
  out.elevator = wrapped(horn - p.hornDirection);
  const [hornU, hornW] = [p.horn * Math.cos(horn), p.horn * Math.sin(horn)];
  out.hornX = p.hingeX + hornU;
  out.hornZ = p.hingeZ + hornW;
  const [alongX, alongZ] = [out.hornX - out.crankX, out.hornZ - p.plane];
  out.crankLever = (-crankV * alongX + crankU * beside) / p.length;
  out.hornLever = (-hornW * alongX + hornU * alongZ) / p.length;
  out.gain = out.crankLever / out.hornLever;
}

/** The same angle between −π and π. */
const wrapped = (angle: number): number => angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI));
