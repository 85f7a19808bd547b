/** Sine of the sideslip from which the cross-flow drag of the body counts. */
export const CROSS_FLOW_FROM = Math.sin((10 * Math.PI) / 180);
/** Where the rounded corner ends and where it begins. */
export const CROSS_FLOW_ENDS = Math.sin((15 * Math.PI) / 180);
export const CROSS_FLOW_BEGINS = (CROSS_FLOW_FROM * CROSS_FLOW_FROM) / CROSS_FLOW_ENDS;
const BEND = CROSS_FLOW_ENDS / (CROSS_FLOW_ENDS - CROSS_FLOW_BEGINS);

/**
 * Share of q C S that the cross-flow drag of a body's side is, of the sine s of the sideslip, with its sign:
 *
 *   s² − sin² 10° from 15° on;  sin 15° (s − s_0)²/(sin 15° − s_0) from s_0 = sin² 10°/sin 15° (6.7°) to 15°;  0 before that
 *
 * The parabola meets both with value and slope, so that laps in wind converge where the sideslip passes through. That it sets in about 10° is a guess;
 * the square of the sine is cross-flow theory (H. J. Allen and E. W. Perkins, NACA Report 1048, from memory).
 */
export function crossFlow(sine: number): number {
  const size = Math.abs(sine);
  if (size <= CROSS_FLOW_BEGINS) return 0;
  const share =
    size < CROSS_FLOW_ENDS
      ? BEND * (size - CROSS_FLOW_BEGINS) * (size - CROSS_FLOW_BEGINS)
      : size * size - CROSS_FLOW_FROM * CROSS_FLOW_FROM;
  return sine < 0 ? -share : share;
}

/** Its slope with the sine. */
export function crossFlowSlope(sine: number): number {
  const size = Math.abs(sine);
  if (size <= CROSS_FLOW_BEGINS) return 0;
  return size < CROSS_FLOW_ENDS ? 2 * BEND * (size - CROSS_FLOW_BEGINS) : 2 * size;
}
