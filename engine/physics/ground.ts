import { STANDARD_GRAVITY } from '../exact';
import { nonNegative, positive } from './domain';

/** A place in the side view: x aft, z up, m. */
export interface SidePlace {
  readonly x: number;
  readonly z: number;
}

/** How the model stands: pitch β (nose up positive, rad) and the side view seen along and square to the ground. */
export interface Stand {
  readonly pitch: number;
  /** Distance of a place behind the main wheels' contact, along the ground, m. */
  along(place: SidePlace): number;
  /** Its height above the ground, m. */
  height(place: SidePlace): number;
}

/** Standing on the main wheels (axle, radius r in m) with the pitch β (rad, nose up). Geometry. */
export function standAt(axle: SidePlace, radius: number, pitch: number): Stand {
  const [cos, sin] = [Math.cos(pitch), Math.sin(pitch)];
  return {
    pitch,
    along: ({ x, z }) => (x - axle.x) * cos + (z - axle.z) * sin,
    height: ({ x, z }) => (z - axle.z) * cos - (x - axle.x) * sin + radius,
  };
}

/**
 * D sin(β + φ) = r: pitch β (rad, nose up) at which main wheels (axle, radius r) and the other support (a place that touches) both stand on
 * the ground; D, φ length and direction from the axle to that place. undefined: the support lies inside the wheel.
 * Derivation: the ground touches the wheel and passes through the place.
 */
export function restPitch(axle: SidePlace, radius: number, support: SidePlace): number | undefined {
  const [aft, down] = [support.x - axle.x, axle.z - support.z];
  const reach = Math.hypot(aft, down);
  if (reach <= nonNegative('wheel radius', radius)) return undefined;
  // Seen from a support behind the axle the angle lies near 0, from one ahead of it near π.
  const lift = Math.asin(radius / reach);
  const direction = Math.atan2(down, aft);
  const pitch = (aft >= 0 ? lift : Math.PI - lift) - direction;
  return pitch > Math.PI ? pitch - 2 * Math.PI : pitch;
}

export interface NoseOver {
  /** kg. */
  readonly mass: number;
  /** The place about which it would tip, distance ahead of the CG along the ground, and CG height above the ground, m. */
  readonly arm: number;
  readonly height: number;
  /** Thrust (N), the height of its line above the ground and its distance behind the place about which it tips (m). */
  readonly thrust: number;
  readonly thrustHeight: number;
  readonly thrustAlong: number;
  /** rad, nose up. */
  readonly pitch: number;
}

/**
 * μ = F/N,  F = [W b + (h − h_P) P cos β − s_P P sin β]/h,  N = W − P sin β: rolling drag over load at which the model just tips on its nose;
 * b, h arm and height of the CG, h_P, s_P height of the thrust line and its distance behind the place of tipping, β pitch. Lift and drag
 * of the air are left out, as at the start of the run. Not positive: the thrust alone tips it.
 * Derivation: moments about the contact in the frame of the model, with its inertia m a = P cos β − F.
 */
export function noseOverRatio(n: NoseOver): number {
  const weight = positive('mass', n.mass) * STANDARD_GRAVITY;
  const [forward, up] = [n.thrust * Math.cos(n.pitch), n.thrust * Math.sin(n.pitch)];
  const height = positive('height of the CG', n.height);
  return (weight * n.arm + (height - n.thrustHeight) * forward - n.thrustAlong * up) / height / (weight - up);
}

/**
 * s = r (1 − cos β),  tan β = b/(h − r): height of the step (m) that a slow wheel of radius r climbs before the model tips over it; b, h
 * arm and height of the CG over the contact. Derivation: the force at the edge of the step passes through the axle and the CG.
 */
export function greatestStep(radius: number, arm: number, height: number): number {
  if (arm <= 0) return 0;
  return radius * (1 - Math.cos(Math.min(Math.atan2(arm, height - radius), Math.PI / 2)));
}

/** Share of the weight on the main wheels, of supports at s = 0 and at s = `support`, with the CG at s = `cg` (m along the ground). Moments. */
export function mainWheelShare(cg: number, support: number): number {
  return 1 - cg / support;
}

/**
 * Rolling drag over load. Source: course notes on aircraft design (W. H. Mason), full-size tyres: dry concrete 0.02, short dry
 * grass 0.05, long grass 0.10. Small wheels on grass are worse.
 */
export const ROLLING = { pavement: 0.02, shortGrass: 0.05, longGrass: 0.1 } as const;
