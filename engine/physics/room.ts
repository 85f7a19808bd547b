import { nonNegative, positive } from './domain';

/** The upright box around a thing seen from the side, m: stations from front to rear, heights from bottom to top. */
export interface SideBox {
  readonly front: number;
  readonly rear: number;
  readonly bottom: number;
  readonly top: number;
}

/**
 * g_x = max(x_b1 − x_a2, x_a1 − x_b2), g_z likewise in height; g = √(g_x² + g_z²) where both are above 0, else the greater of the two.
 *
 * Gap (m) between two things seen from the side: how far they are apart where it is above 0, 0 where they touch, and where it is below 0 how
 * far one has to go, along the body or upright, to be clear of the other. The same whichever is named first. NaN where a place is not known.
 * Throws a RangeError where a box ends ahead of its front or under its bottom.
 * Derivation: distance of two rectangles with sides along the axes.
 */
export function sideGap(a: SideBox, b: SideBox): number {
  for (const { front, rear, bottom, top } of [a, b]) {
    if (rear < front) throw new RangeError(`rear is ${rear}; it must not lie ahead of front, ${front}`);
    if (top < bottom) throw new RangeError(`top is ${top}; it must not lie under bottom, ${bottom}`);
  }
  const along = Math.max(b.front - a.rear, a.front - b.rear);
  const upright = Math.max(b.bottom - a.top, a.bottom - b.top);
  return along > 0 && upright > 0 ? Math.hypot(along, upright) : Math.max(along, upright);
}

/**
 * x_r = min(x_b, x_t − n) − l/2.
 *
 * Station (m) of the middle of an engine of length l (m, above 0, backplate to drive washer) that stands as far aft as it can: its backplate
 * at the rear of the bearers x_b, or where a room of n (m, not below 0) is left ahead of what stands behind it at x_t. Infinity for what isn't there.
 * Derivation: geometry.
 */
export function rearmostEngine(length: number, bearerRear: number, behind: number, room: number): number {
  return Math.min(bearerRear, behind - nonNegative('room', room)) - positive('length', length) / 2;
}
